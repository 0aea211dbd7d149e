package tamabako.problems.making;

import java.util.Optional;
import tamabako.problems.making.Made.Part;
import tamabako.problems.making.Made.Reason;

/// What a wish for roots may ask for.
final class RootLimits {

    private static final int MOST_DIGITS = 10;

    /// The most whole digits of a root that goes on behind the point.
    private static final int MOST_ROUNDED = 5;

    private static final int MOST_PLACES = 6;

    /// Each digit of a cube root takes four rods, so the longest frame has room for so many, whole
    /// ones and decimals together.
    private static final int MOST_OF_CUBE_ROOT = 5;

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
                        Limits.range(
                                Part.ANSWER_PLACES, wish.places().orElse(1), 1, mostPlaces(wish)));
    }

    static RootWish nearest(RootWish wish) {
        RootWish known =
                new RootWish(Math.clamp(wish.degree(), 2, 3), wish.digits(), wish.places());
        Digits digits = known.digits().within(1, most(known));
        RootWish sized = new RootWish(known.degree(), digits, known.places());
        return sized.places().isPresent()
                ? sized.to(Math.clamp(sized.places().getAsInt(), 1, mostPlaces(sized)))
                : sized;
    }

    private static int most(RootWish wish) {
        if (wish.places().isEmpty()) {
            return MOST_DIGITS;
        }
        return wish.degree() == 3 ? MOST_OF_CUBE_ROOT - 1 : MOST_ROUNDED;
    }

    private static int mostPlaces(RootWish wish) {
        return wish.degree() == 3 ? MOST_OF_CUBE_ROOT - wish.digits().most() : MOST_PLACES;
    }
}
