package tamabako.desk.command;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import tamabako.problems.Attempt;
import tamabako.problems.marking.Mark;
import tamabako.problems.marking.Marker;
import tamabako.problems.marking.WritingRules;
import tamabako.problems.marking.Written;
import tamabako.problems.words.ProblemWords;
import tamabako.problems.words.Sayable;

/// An attempt's mark as one line of JSON.
record MarkLine(WritingRules rules) {

    private static final ProblemWords ENGLISH = ProblemWords.of(Locale.ENGLISH);
    private static final ProblemWords JAPANESE = ProblemWords.of(Locale.JAPANESE);

    String of(Attempt attempt) {
        Mark mark = Marker.mark(attempt.problem(), attempt.answer(), rules);
        ObjectNode line = JsonNodeFactory.instance.objectNode();
        if (!attempt.problem().id().isEmpty()) {
            line.put("id", attempt.problem().id());
        }
        attempt.pupil().ifPresent(pupil -> line.put("pupil", pupil));
        line.put("answer", attempt.answer())
                .put("mark", Sayable.word(mark.getClass()))
                .put("right", mark.isRight())
                .put("expected", Written.of(attempt.problem()).toString());
        if (!mark.isRight()) {
            line.putObject("say").put("en", ENGLISH.say(mark)).put("ja", JAPANESE.say(mark));
        }
        return line.toString();
    }
}
