package tamabako.problems.making;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tamabako.frame.Technique;
import tamabako.problems.making.Made.Part;
import tamabako.problems.making.Made.Reason;
import tamabako.problems.making.column.Lengths;
import tamabako.problems.making.column.Shape;
import tamabako.problems.making.column.Signs;

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
        int rows = wish.rows();
        Signs signs = wish.signs();
        return range(Part.ROWS, rows, 2, MOST_ROWS)
                .or(() -> lengthReason(rows, wish.shape().lengths()))
                .or(() ->
                        range(
                                Part.PLACES,
                                wish.shape().places(),
                                0,
                                wish.shape().lengths().least() - 1))
                .or(() -> range(Part.MINUS_ROWS, signs.leastMinus(), 0, rows - 1))
                .or(() -> range(Part.MOST_MINUS_ROWS, signs.mostMinus(), signs.leastMinus(), rows))
                .or(() -> range(Part.STROKES_WITHIN, wish.strokesWithin().orElse(0), 0, 100))
                .or(() -> notAllowed(wish));
    }

    private static Optional<Reason> lengthReason(int rows, Lengths lengths) {
        return range(Part.LEAST_DIGITS, lengths.least(), 1, MOST_DIGITS)
                .or(() -> range(Part.MOST_DIGITS, lengths.most(), lengths.least(), MOST_DIGITS))
                .or(() ->
                        switch (lengths) {
                            case Lengths.Between _ -> Optional.empty();
                            case Lengths.Table(List<Integer> digits) ->
                                    range(Part.ROWS, rows, digits.size(), digits.size());
                            case Lengths.Total(int digits, int least, int most) ->
                                    range(Part.DIGITS_IN_ALL, digits, rows * least, rows * most);
                        });
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
        Lengths lengths = clamped(wish.shape().lengths(), rows);
        Signs signs = wish.signs();
        int minus = Math.clamp(signs.leastMinus(), 0, rows - 1);
        int most = Math.clamp(signs.mostMinus(), minus, rows - 1);
        Set<Technique> allowed = EnumSet.noneOf(Technique.class);
        allowed.addAll(wish.allowed());
        allowed.addAll(wish.required());
        if (allowed.isEmpty()) {
            allowed.add(Technique.DIRECT);
        }
        ColumnWish near =
                wish.with(
                                new Shape(
                                        rows,
                                        lengths,
                                        Math.clamp(wish.shape().places(), 0, lengths.least() - 1)))
                        .withMinusRows(minus, most)
                        .allowing(allowed);
        return near.strokesWithin().isPresent()
                ? near.withStrokesWithin(Math.clamp(near.strokesWithin().getAsInt(), 0, 100))
                : near;
    }

    private static Lengths clamped(Lengths lengths, int rows) {
        int least = Math.clamp(lengths.least(), 1, MOST_DIGITS);
        int most = Math.clamp(lengths.most(), least, MOST_DIGITS);
        return switch (lengths) {
            case Lengths.Between _ -> new Lengths.Between(least, most);
            case Lengths.Table(List<Integer> digits) ->
                    digits.size() == rows
                            ? new Lengths.Table(
                                    digits.stream().map(n -> Math.clamp(n, least, most)).toList())
                            : new Lengths.Between(least, most);
            case Lengths.Total(int digits, _, _) ->
                    new Lengths.Total(Math.clamp(digits, rows * least, rows * most), least, most);
        };
    }
}
