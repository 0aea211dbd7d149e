package tamabako.problems.effort;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import tamabako.frame.Technique;
import tamabako.problems.Problem;
import tamabako.problems.Quotient;
import tamabako.problems.Story;

/// What a problem takes, or several together.
///
/// @param motions moves of the hand: strokes made together count once
/// @param strokes pushes of one finger, as [tamabako.frame.Stroke] has them
/// @param techniques how many steps are by each technique; none stands for 0
/// @param seconds the expected time of the pupil that the [StrokeTimes] describe
public record Effort(int motions, int strokes, Map<Technique, Integer> techniques, double seconds) {

    /// Nothing to do.
    public static final Effort NONE = new Effort(0, 0, Map.of(), 0);

    public Effort {
        EnumMap<Technique, Integer> ordered = new EnumMap<>(Technique.class);
        techniques.forEach((technique, count) -> {
            if (count > 0) {
                ordered.put(technique, count);
            }
        });
        techniques = Collections.unmodifiableMap(ordered);
    }

    /// What `problem` takes, worked in the common way; the earlier sums of a story included.
    ///
    /// @throws tamabako.frame.Unworkable if it does not fit the longest frame
    public static Effort of(Problem problem) {
        return of(problem, StrokeTimes.USUAL);
    }

    /// What `problem` takes a pupil with these times.
    ///
    /// @throws tamabako.frame.Unworkable if it does not fit the longest frame
    public static Effort of(Problem problem, StrokeTimes times) {
        HandCount count = HandCount.of(problem);
        Effort last =
                new Effort(
                        count.motions(),
                        count.strokes(),
                        count.techniques(),
                        times.seconds(problem, count));
        return problem.terms().told().orElse(null) instanceof Story story
                ? story.earlier().stream().map(sum -> of(sum, times)).reduce(last, Effort::plus)
                : last;
    }

    /// How often the first trial digit of `quotient` has to be revised, by the trial rule that
    /// divides by the divisor's first digit.
    ///
    /// @throws tamabako.frame.Unworkable if it does not fit the longest frame
    public static int firstRevisions(Quotient quotient) {
        return HandCount.of(quotient).firstRevisions();
    }

    /// What all of them take together.
    ///
    /// @throws tamabako.frame.Unworkable if one does not fit the longest frame
    public static Effort of(Collection<? extends Problem> problems) {
        return problems.stream().map(Effort::of).reduce(NONE, Effort::plus);
    }

    /// How many steps are by `technique`.
    public int count(Technique technique) {
        return techniques.getOrDefault(technique, 0);
    }

    /// How many steps there are.
    public int steps() {
        return techniques.values().stream().mapToInt(Integer::intValue).sum();
    }

    /// Both together.
    public Effort plus(Effort other) {
        EnumMap<Technique, Integer> sums = new EnumMap<>(Technique.class);
        sums.putAll(techniques);
        other.techniques.forEach((technique, count) -> sums.merge(technique, count, Integer::sum));
        return new Effort(
                motions + other.motions, strokes + other.strokes, sums, seconds + other.seconds);
    }
}
