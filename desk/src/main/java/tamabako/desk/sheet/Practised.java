package tamabako.desk.sheet;

import java.util.List;
import java.util.Locale;
import tamabako.frame.Technique;
import tamabako.frame.Unworkable;
import tamabako.problems.Problem;
import tamabako.problems.Story;
import tamabako.problems.effort.Effort;

/// A problem of the preview, with what it takes.
///
/// @param shown the problem
/// @param story the story that asks for it; empty for none
/// @param strokes pushes of one finger
/// @param seconds the expected time, rounded, one at least
/// @param techniques how many steps are by each technique that occurs
public record Practised(
        Shown shown, String story, int strokes, long seconds, List<Count> techniques) {

    public Practised {
        techniques = List.copyOf(techniques);
    }

    /// So many steps by one technique.
    public record Count(Technique technique, int steps) {}

    /// That problem, as a page in the language of `locale` shows it.
    static Practised of(Problem problem, Locale locale) {
        Effort effort = effort(problem);
        return new Practised(
                Shown.of(problem, locale),
                problem.terms().told().orElse(null) instanceof Story story ? story.in(locale) : "",
                effort.strokes(),
                Math.max(1, Math.round(effort.seconds())),
                effort.techniques().entrySet().stream()
                        .map(one -> new Count(one.getKey(), one.getValue()))
                        .toList());
    }

    /// All of them.
    static List<Practised> all(List<Problem> problems, Locale locale) {
        return problems.stream().map(problem -> of(problem, locale)).toList();
    }

    /// Nothing is counted where the longest frame is too short.
    private static Effort effort(Problem problem) {
        try {
            return Effort.of(problem);
        } catch (Unworkable _) {
            return Effort.NONE;
        }
    }
}
