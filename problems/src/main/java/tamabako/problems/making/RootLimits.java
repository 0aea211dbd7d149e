package tamabako.problems.making;

import java.util.Optional;
import java.util.OptionalInt;
import tamabako.problems.making.Made.Part;
import tamabako.problems.making.Made.Reason;

/// What a wish for roots may ask for.
final class RootLimits {

    private static final int MOST_DIGITS = 10;

    /// The most whole digits of a root that goes on behind the point.
    private static final int MOST_ROUNDED = 5;

    private static final int MOST_PLACES = 6;

    private RootLimits() {}

    static Optional<Reason> reason(RootWish wish) {
        int most = most(wish);
        return Limits.range(Part.DEGREE, wish.degree(), 2, 3)
                .or(() -> Limits.range(Part.ROOT_DIGITS, wish.digits().least(), 1, most))
                .or(() ->
                        Limits.range(
                                Part.ROOT_DIGITS,
                                wish.digits().most(),
                                wish.digits().least(),
                                most))
                .or(() ->
                        Limits.range(Part.ANSWER_PLACES, wish.places().orElse(1), 1, MOST_PLACES));
    }

    static RootWish nearest(RootWish wish) {
        OptionalInt places =
                wish.places().isPresent()
                        ? OptionalInt.of(Math.clamp(wish.places().getAsInt(), 1, MOST_PLACES))
                        : wish.places();
        return new RootWish(
                Math.clamp(wish.degree(), 2, 3), wish.digits().within(1, most(wish)), places);
    }

    private static int most(RootWish wish) {
        return wish.places().isPresent() ? MOST_ROUNDED : MOST_DIGITS;
    }
}
