package tamabako.paper.layout;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import tamabako.paper.wish.Size;

/// How many problems go side by side, and at what size of figures.
///
/// @param count how many
/// @param width the width of each, in points
/// @param figures the size of the figures
record Across(int count, double width, double figures) {

    /// The most that fit with figures of at least the least size of `size`, from `most` down.
    ///
    /// @param most how many at the most
    /// @param room the width that all of them and the gaps between them have
    /// @param figuresFor the largest size of figures that a width allows
    static Optional<Across> fit(
            int most, double room, double gap, Size size, ToDoubleFunction<Double> figuresFor) {
        for (int count = most; count >= 1; count--) {
            double width = (room - gap * (count - 1)) / count;
            double figures = Math.min(size.mostFigures(), figuresFor.applyAsDouble(width));
            if (figures >= size.leastFigures()) {
                return Optional.of(new Across(count, width, figures));
            }
        }
        return Optional.empty();
    }
}
