package tamabako.desk.room.journal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import tamabako.desk.room.Activity;
import tamabako.desk.room.Expected;
import tamabako.desk.room.Round;
import tamabako.desk.room.Setup;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.marking.WritingRules;

/// What a room was opened with, as JSON. Problems stand in it as the documented format writes them.
final class SetupJson {

    private static final JsonMapper JSON = new JsonMapper();

    private SetupJson() {}

    /// @param activity the sort of activity; `written` is the only one so far
    private record RoundLine(
            String title,
            String sheet,
            String activity,
            List<String> problems,
            boolean commas,
            long limit) {}

    private record SetupLine(
            String title,
            List<RoundLine> rounds,
            List<Expected> pupils,
            boolean aliases,
            boolean oneByOne,
            int most) {}

    static String write(Setup setup) {
        SetupLine line =
                new SetupLine(
                        setup.title(),
                        setup.rounds().stream().map(SetupJson::line).toList(),
                        setup.pupils(),
                        setup.aliases(),
                        setup.oneByOne(),
                        setup.most());
        try {
            return JSON.writeValueAsString(line);
        } catch (JsonProcessingException bug) {
            throw new IllegalStateException("Cannot write " + setup + ".", bug);
        }
    }

    private static RoundLine line(Round round) {
        long limit = round.limit().map(Duration::toMillis).orElse(-1L);
        return switch (round.activity()) {
            case Activity.Written(var problems, WritingRules rules) ->
                    new RoundLine(
                            round.title(),
                            round.sheet(),
                            "written",
                            problems.stream().map(ProblemJson::line).toList(),
                            rules.commas(),
                            limit);
        };
    }

    static Setup read(String text) {
        try {
            SetupLine line = JSON.readValue(text, SetupLine.class);
            return new Setup(
                    line.title(),
                    line.rounds().stream().map(SetupJson::round).toList(),
                    line.pupils(),
                    line.aliases(),
                    line.oneByOne(),
                    line.most());
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException("Not the setup of a room: " + text, broken);
        }
    }

    private static Round round(RoundLine line) {
        if (!line.activity().equals("written")) {
            throw new IllegalStateException("No activity \"" + line.activity() + "\".");
        }
        return new Round(
                line.title(),
                line.sheet(),
                new Activity.Written(
                        line.problems().stream().map(ProblemJson::parse).toList(),
                        new WritingRules(line.commas())),
                line.limit() < 0 ? Optional.empty() : Optional.of(Duration.ofMillis(line.limit())));
    }
}
