package tamabako.problems.making.column;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.problems.making.column.Continuations.Point;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.making.draw.Powers;

/// Counts how a column can go on from every running total, and draws by that count: no try comes to
/// nothing, and no column is likelier than others of the same lengths.
///
/// Techniques that must occur are counted in; other conditions are not.
final class Completions implements Source {

    private final Continuations continuations;
    private final Map<Point, BigInteger> counts = new HashMap<>();
    private final Map<Point, Choice> choices = new HashMap<>();

    /// What a row counts for by its digits, so that every choice of lengths is equally likely.
    private final BigInteger[] worth;

    private final long mostWork;
    private long work;

    private Completions(Asked asked, long mostWork) {
        this.continuations = new Continuations(asked);
        this.mostWork = mostWork;
        int most = asked.shape().lengths().most();
        this.worth = new BigInteger[most + 1];
        for (int length = 0; length <= most; length++) {
            worth[length] = BigInteger.TEN.pow(most - length);
        }
    }

    /// The counts for what is asked, or empty where more than `mostWork` ways would have to be
    /// followed.
    static Optional<Completions> of(Asked asked, long mostWork) {
        if (!Continuations.fit(asked)) {
            return Optional.empty();
        }
        Completions completions = new Completions(asked, mostWork);
        completions.weight();
        return completions.work > mostWork ? Optional.empty() : Optional.of(completions);
    }

    /// What all columns count for: their number where all rows have one length.
    BigInteger weight() {
        return count(continuations.start());
    }

    @Override
    public boolean draw(Draws draws, Facts into) {
        Point point = continuations.start();
        while (!continuations.isWhole(point)) {
            List<Point> next = continuations.next(point);
            Point then = next.get(choice(point, next).draw(draws));
            into.setNumber(point.signs().row(), then.total() - point.total());
            point = then;
        }
        return true;
    }

    /// Every column there is, but at most `limit`.
    List<long[]> all(int rows, int limit) {
        List<long[]> all = new ArrayList<>();
        collect(continuations.start(), new long[rows], limit, all);
        return all;
    }

    private void collect(Point point, long[] numbers, int limit, List<long[]> all) {
        if (all.size() == limit || count(point).signum() == 0) {
            return;
        }
        if (continuations.isWhole(point)) {
            all.add(numbers.clone());
            return;
        }
        for (Point next : continuations.next(point)) {
            numbers[point.signs().row()] = next.total() - point.total();
            collect(next, numbers, limit, all);
        }
    }

    private BigInteger count(Point point) {
        if (continuations.isWhole(point)) {
            return continuations.isGranted(point) ? BigInteger.ONE : BigInteger.ZERO;
        }
        BigInteger known = counts.get(point);
        if (known == null) {
            known = BigInteger.ZERO;
            for (Point next : continuations.next(point)) {
                if (work++ > mostWork) {
                    return BigInteger.ZERO;
                }
                known = known.add(weight(point, next));
            }
            counts.put(point, known);
        }
        return known;
    }

    private Choice choice(Point point, List<Point> next) {
        Choice known = choices.get(point);
        if (known == null) {
            known = Choice.of(next.stream().map(then -> weight(point, then)).toList());
            choices.put(point, known);
        }
        return known;
    }

    private BigInteger weight(Point from, Point to) {
        int length = Powers.digits(Math.abs(to.total() - from.total()));
        return worth[length].multiply(count(to));
    }
}
