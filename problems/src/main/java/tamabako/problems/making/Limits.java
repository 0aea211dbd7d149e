package tamabako.problems.making;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import tamabako.frame.Technique;
import tamabako.problems.making.Made.Part;
import tamabako.problems.making.Made.Reason;

/// What a wish may ask for at all, before anything is drawn.
final class Limits {

    private static final int MOST_ROWS = 100;
    private static final int MOST_DIGITS = 16;

    private Limits() {}

    /// That `wish` cannot be granted because a part of it is out of range, with the nearest wish in
    /// range; empty if all parts are in range.
    static Optional<Made> broken(Wish wish, int count) {
        Optional<Reason> reason = range(Part.COUNT, count, 1, Maker.MOST_PROBLEMS);
        if (reason.isPresent()) {
            return reason.map(r -> new Made.Impossible(wish, r, Optional.empty()));
        }
        return reason(wish, count)
                .map(r -> new Made.Impossible(wish, r, Optional.of(clamped(wish, count))));
    }

    private static Optional<Reason> reason(Wish wish, int count) {
        return switch (wish) {
            case ColumnWish columns -> columnReason(columns);
            case ProductWish products -> PairLimits.of(products).reason(count);
            case QuotientWish quotients -> PairLimits.of(quotients).reason(count);
            case RootWish roots -> RootLimits.reason(roots);
        };
    }

    private static Optional<Reason> columnReason(ColumnWish wish) {
        return range(Part.ROWS, wish.rows(), 2, MOST_ROWS)
                .or(() -> range(Part.LEAST_DIGITS, wish.leastDigits(), 1, MOST_DIGITS))
                .or(() ->
                        range(Part.MOST_DIGITS, wish.mostDigits(), wish.leastDigits(), MOST_DIGITS))
                .or(() -> range(Part.PLACES, wish.places(), 0, wish.leastDigits() - 1))
                .or(() -> range(Part.MINUS_ROWS, wish.minusRows(), 0, wish.rows() - 1))
                .or(() -> notAllowed(wish));
    }

    private static Optional<Reason> notAllowed(ColumnWish wish) {
        if (wish.allowed().isEmpty()) {
            return Optional.of(new Reason.NothingAllowed());
        }
        Set<Technique> missing = EnumSet.noneOf(Technique.class);
        missing.addAll(wish.required());
        missing.removeAll(wish.allowed());
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of(new Reason.RequiredNotAllowed(missing));
    }

    static Optional<Reason> range(Part part, int value, int least, int most) {
        return value >= least && value <= most
                ? Optional.empty()
                : Optional.of(new Reason.OutOfRange(part, value, least, most));
    }

    private static Wish clamped(Wish wish, int count) {
        return switch (wish) {
            case ColumnWish columns -> clampedColumns(columns);
            case ProductWish products -> PairLimits.of(products).nearest(products, count);
            case QuotientWish quotients -> PairLimits.of(quotients).nearest(quotients, count);
            case RootWish roots -> RootLimits.nearest(roots);
        };
    }

    private static ColumnWish clampedColumns(ColumnWish wish) {
        int rows = Math.clamp(wish.rows(), 2, MOST_ROWS);
        int least = Math.clamp(wish.leastDigits(), 1, MOST_DIGITS);
        Set<Technique> allowed = EnumSet.noneOf(Technique.class);
        allowed.addAll(wish.allowed());
        allowed.addAll(wish.required());
        if (allowed.isEmpty()) {
            allowed.add(Technique.DIRECT);
        }
        return wish.withRows(rows)
                .withDigits(least, Math.clamp(wish.mostDigits(), least, MOST_DIGITS))
                .withPlaces(Math.clamp(wish.places(), 0, least - 1))
                .withMinusRows(Math.clamp(wish.minusRows(), 0, rows - 1))
                .allowing(allowed);
    }
}
