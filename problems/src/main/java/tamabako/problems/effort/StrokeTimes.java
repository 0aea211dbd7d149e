package tamabako.problems.effort;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.ResourceBundle;
import java.util.function.Function;
import java.util.stream.Collectors;
import tamabako.frame.Technique;
import tamabako.problems.Column;
import tamabako.problems.PadLine;
import tamabako.problems.Problem;
import tamabako.problems.Story;

/// How long a pupil takes for each part of the work, in seconds.
///
/// The time of a problem is the sum of its parts, as in a stroke-counting model (Card, Moran and
/// Newell, "The keystroke-level model for user performance time with interactive systems", 1980).
///
/// @param parts the seconds of each part that is no step
/// @param steps the seconds of finding a step by each technique, its motions not included
public record StrokeTimes(Map<Part, Double> parts, Map<Technique, Double> steps) {

    /// A part of the work.
    public enum Part {
        /// Finding the problem and clearing the frame.
        PROBLEM,
        /// Looking at the next number.
        NUMBER,
        /// Turning to the next leaf of a slip pad, beyond looking at its number.
        LEAF,
        /// Reading a story and finding what is to be worked.
        STORY,
        /// One motion of the hand.
        MOTION,
        /// Recalling a product of two digits and finding its rods.
        PRODUCT,
        /// Finding a trial digit of a quotient or root.
        TRIAL,
        /// Seeing that a trial digit has to be revised.
        REVISION,
        /// Writing one digit of the answer.
        WRITTEN
    }

    /// The times of `stroke-times.properties`: a practised pupil at about the third grade.
    public static final StrokeTimes USUAL = read();

    public StrokeTimes {
        parts = Map.copyOf(parts);
        steps = Map.copyOf(steps);
        if (parts.size() < Part.values().length || steps.size() < Technique.values().length) {
            throw new IllegalArgumentException("Every part and technique has its time.");
        }
    }

    /// The times of a pupil who takes `factor` times as long for everything, above 0.
    public StrokeTimes scaled(double factor) {
        if (!(factor > 0)) {
            throw new IllegalArgumentException(
                    "Times are scaled by more than 0, not " + factor + ".");
        }
        return new StrokeTimes(scaled(parts, factor), scaled(steps, factor));
    }

    /// The time of `problem`, which was counted as `count`; its earlier sums come on top.
    double seconds(Problem problem, HandCount count) {
        double seconds =
                of(Part.PROBLEM)
                        + of(Part.MOTION) * count.motions()
                        + of(Part.PRODUCT) * count.products()
                        + of(Part.TRIAL) * count.trials()
                        + of(Part.REVISION) * count.revisions()
                        + of(Part.WRITTEN) * problem.answer().value().precision()
                        + told(problem);
        for (Technique technique : Technique.values()) {
            seconds += Objects.requireNonNull(steps.get(technique)) * count.steps(technique);
        }
        return seconds;
    }

    private double told(Problem problem) {
        int numbers = problem instanceof Column column ? column.rows().size() : 2;
        double read = of(Part.NUMBER) * numbers;
        return problem.terms()
                .told()
                .map(told ->
                        switch (told) {
                            case PadLine _ -> read + of(Part.LEAF) * (numbers - 1);
                            case Story _ -> read + of(Part.STORY);
                        })
                .orElse(read);
    }

    private double of(Part part) {
        return Objects.requireNonNull(parts.get(part));
    }

    private static <K> Map<K, Double> scaled(Map<K, Double> times, double factor) {
        return times.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, entry -> entry.getValue() * factor));
    }

    private static StrokeTimes read() {
        ResourceBundle file =
                ResourceBundle.getBundle("tamabako.problems.effort.stroke-times", Locale.ROOT);
        return new StrokeTimes(
                read(file, Part.class, part -> part.name().toLowerCase(Locale.ROOT)),
                read(file, Technique.class, Technique::word));
    }

    private static <K extends Enum<K>> Map<K, Double> read(
            ResourceBundle file, Class<K> keys, Function<K, String> name) {
        Map<K, Double> times = new EnumMap<>(keys);
        Arrays.stream(keys.getEnumConstants())
                .forEach(
                        key -> times.put(key, Double.parseDouble(file.getString(name.apply(key)))));
        return times;
    }
}
