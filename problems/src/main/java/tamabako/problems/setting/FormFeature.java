package tamabako.problems.setting;

import java.util.List;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Stream;
import tamabako.frame.Technique;
import tamabako.problems.Problem;
import tamabako.problems.effort.Effort;

/// Something in which the forms of a paper are to be equal, such as strokes; an expected score is
/// another.
///
/// @param measure how much of it some problems have, given what they take; adds up over problems
/// @param counted whether it is a whole number, which a form may reach exactly
/// @param share how far from the mean of all forms a form may be, as a share of that mean
/// @param least how far it may be at any rate
public record FormFeature(
        ToDoubleBiFunction<List<Problem>, Effort> measure,
        boolean counted,
        double share,
        double least) {

    /// Half of two in a thousand, the widest that equal forms spread, less a little for rounding.
    private static final double EQUAL = 0.00095;

    /// Strokes of the hand: 0.2 % from the form with the fewest to that with the most.
    public static final FormFeature STROKES =
            new FormFeature((_, effort) -> effort.strokes(), true, EQUAL, 0.45);

    /// Expected seconds, the same.
    public static final FormFeature SECONDS =
            new FormFeature((_, effort) -> effort.seconds(), false, EQUAL, 0.01);

    /// Steps by a technique: 1.5 % of the mean up or down, or two steps.
    public static FormFeature of(Technique technique) {
        return new FormFeature((_, effort) -> effort.count(technique), true, 0.015, 2.05);
    }

    /// In what forms are equal where nothing else is asked: strokes, seconds, and the steps by each
    /// technique.
    public static List<FormFeature> usual() {
        return Stream.concat(
                        Stream.of(STROKES, SECONDS),
                        Stream.of(Technique.values()).map(FormFeature::of))
                .toList();
    }

    /// The same feature with other limits.
    FormFeature within(double changedShare, double changedLeast) {
        return new FormFeature(measure, counted, changedShare, changedLeast);
    }

    /// The total that forms should reach where `mean` is what they have.
    double goal(double mean) {
        return counted ? Math.rint(mean) : mean;
    }

    /// How far from the goal a form may be.
    double tolerance(double mean) {
        return Math.max(least, share * mean);
    }
}
