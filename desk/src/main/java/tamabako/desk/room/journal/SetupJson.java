package tamabako.desk.room.journal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tamabako.desk.room.Activity;
import tamabako.desk.room.Calling;
import tamabako.desk.room.Contest;
import tamabako.desk.room.Expected;
import tamabako.desk.room.Round;
import tamabako.desk.room.Setup;
import tamabako.desk.showing.Look;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.marking.WritingRules;
import tamabako.voice.number.Wording;
import tamabako.voice.script.CallWish;
import tamabako.voice.sound.Pace;

/// What a room was opened with, as JSON. Problems stand in it as the documented format writes them.
final class SetupJson {

    private static final JsonMapper JSON = new JsonMapper();

    private SetupJson() {}

    /// @param activity the word of the activity
    /// @param called how it is called; null for every other activity
    /// @param shown how it is shown; null for every other activity
    private record RoundLine(
            String title,
            String sheet,
            String activity,
            List<String> problems,
            boolean commas,
            long limit,
            @Nullable CalledLine called,
            @Nullable ShownLine shown) {}

    private record CalledLine(
            String language,
            String wording,
            String unit,
            boolean clearing,
            List<String> paces,
            String contest) {}

    private record ShownLine(double period, String look, boolean anySize, String screen) {}

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
        Activity activity = round.activity();
        return new RoundLine(
                round.title(),
                round.sheet(),
                activity.word(),
                activity.problems().stream().map(ProblemJson::line).toList(),
                activity.rules().commas(),
                round.limit().map(Duration::toMillis).orElse(-1L),
                activity instanceof Activity.Called(_, Calling calling) ? line(calling) : null,
                activity instanceof Activity.Shown shown ? line(shown) : null);
    }

    private static CalledLine line(Calling calling) {
        CallWish wish = calling.wish();
        return new CalledLine(
                calling.language().toLanguageTag(),
                wish.wording().name(),
                wish.unit().orElse(""),
                wish.clearing(),
                calling.paces().stream().map(SetupJson::written).toList(),
                calling.contest().word());
    }

    /// As [Pace#parse] reads it.
    private static String written(Pace pace) {
        return switch (pace) {
            case Pace.SecondsARow(double seconds) -> plain(seconds) + "s";
            case Pace.DigitsASecond(double digits) -> plain(digits) + "d";
            case Pace.Unhurried(double seconds) -> "+" + plain(seconds);
        };
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private static ShownLine line(Activity.Shown shown) {
        return new ShownLine(
                shown.pace().period(), shown.look().name(), shown.anySize(), shown.screen().name());
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
        return new Round(
                line.title(),
                line.sheet(),
                activity(line, line.problems().stream().map(ProblemJson::parse).toList()),
                line.limit() < 0 ? Optional.empty() : Optional.of(Duration.ofMillis(line.limit())));
    }

    private static Activity activity(RoundLine line, List<Problem> problems) {
        CalledLine called = line.called();
        ShownLine shown = line.shown();
        if (called != null) {
            return new Activity.Called(columns(problems), calling(called));
        }
        if (shown != null) {
            return new Activity.Shown(
                    columns(problems),
                    new tamabako.desk.showing.Pace(shown.period()),
                    Look.valueOf(shown.look()),
                    shown.anySize(),
                    Activity.Screen.valueOf(shown.screen()));
        }
        if (!line.activity().equals("written")) {
            throw new IllegalStateException("No activity \"" + line.activity() + "\".");
        }
        return new Activity.Written(problems, new WritingRules(line.commas()));
    }

    private static List<Column> columns(List<Problem> problems) {
        return problems.stream().map(Column.class::cast).toList();
    }

    private static Calling calling(CalledLine line) {
        return new Calling(
                Locale.forLanguageTag(line.language()),
                new CallWish(
                        Wording.valueOf(line.wording()),
                        Optional.of(line.unit()).filter(unit -> !unit.isEmpty()),
                        line.clearing()),
                line.paces().stream().map(pace -> Pace.parse(pace).orElseThrow()).toList(),
                Contest.of(line.contest()));
    }
}
