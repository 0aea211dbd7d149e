package tamabako.problems.making.column;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tamabako.problems.making.column.HandCondition.OnlyTechniques;
import tamabako.problems.making.column.HandCondition.TechniqueCount;
import tamabako.problems.making.column.NextRows.Rows;
import tamabako.problems.making.column.TotalCondition.BelowZero;
import tamabako.problems.making.column.TotalCondition.Dips;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.making.draw.Powers;

/// Counts how a column can go on from every running total, and draws by that count: no try comes to
/// nothing, and no column is likelier than others of the same lengths.
///
/// Techniques that must occur are counted in; other conditions are not.
final class Completions implements Source {

    /// More places than these would take more room than they are worth.
    private static final long MOST_PLACES = 2_000_000;

    private final Places places;
    private final NextRows nextRows;

    /// What a row counts for by its digits, so that every choice of lengths is equally likely.
    private final BigInteger[] worth;

    /// By place.
    private final @Nullable BigInteger[] counts;

    private final @Nullable Choice[] choices;
    private final long mostWork;
    private long work;

    private Completions(Asked asked, Places places, long mostWork) {
        this.places = places;
        this.nextRows = new NextRows(asked);
        this.counts = new BigInteger[(int) places.count()];
        this.choices = new Choice[counts.length];
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
        Places places = new Places(asked);
        if (places.count() > MOST_PLACES) {
            return Optional.empty();
        }
        Completions completions = new Completions(asked, places, mostWork);
        completions.weight();
        return completions.work > mostWork ? Optional.empty() : Optional.of(completions);
    }

    /// What all columns count for: their number where all rows have one length.
    BigInteger weight() {
        return count(places.start());
    }

    @Override
    public boolean draw(Draws draws, Facts into) {
        int place = places.start();
        for (int row = 0; row < into.rows(); row++) {
            int drawn = choice(place).draw(draws);
            Rows added = added(place);
            boolean minus = drawn >= added.size();
            Rows rows = minus ? taken(place) : added;
            int index = minus ? drawn - added.size() : drawn;
            int number = rows.number(index);
            into.put(row, Digits.pack(Math.abs(number)), minus);
            place = places.after(place, number, rows.uses(index));
        }
        return true;
    }

    @Override
    public boolean grants(Condition condition) {
        return switch (condition) {
            case OnlyTechniques _ -> true;
            case TechniqueCount(_, int least, int most) ->
                    least <= 1 && (most == HandCondition.ANY || most <= 0);
            case BelowZero(Dips dips) -> dips == Dips.NEVER;
            default -> false;
        };
    }

    /// Every column there is, but at most `limit`.
    List<long[]> all(int rows, int limit) {
        List<long[]> all = new ArrayList<>();
        collect(places.start(), 0, new long[rows], limit, all);
        return all;
    }

    private void collect(int place, int row, long[] numbers, int limit, List<long[]> all) {
        if (all.size() == limit || count(place).signum() == 0) {
            return;
        }
        if (places.isWhole(place)) {
            all.add(numbers.clone());
            return;
        }
        for (Rows rows : List.of(added(place), taken(place))) {
            for (int i = 0; i < rows.size(); i++) {
                numbers[row] = rows.number(i);
                int after = places.after(place, rows.number(i), rows.uses(i));
                collect(after, row + 1, numbers, limit, all);
            }
        }
    }

    private Rows added(int place) {
        if (!places.mayAdd(place)) {
            return Rows.NONE;
        }
        return places.isFirst(place)
                ? nextRows.first()
                : nextRows.on(places.total(place), false);
    }

    private Rows taken(int place) {
        return places.mayTake(place) ? nextRows.on(places.total(place), true) : Rows.NONE;
    }

    private BigInteger count(int place) {
        if (places.isWhole(place)) {
            return places.isGranted(place) ? BigInteger.ONE : BigInteger.ZERO;
        }
        BigInteger known = counts[place];
        if (known == null) {
            known = count(place, added(place)).add(count(place, taken(place)));
            counts[place] = known;
        }
        return known;
    }

    /// Of the columns that go on with one of `rows`.
    private BigInteger count(int place, Rows rows) {
        BigInteger count = BigInteger.ZERO;
        for (int i = 0; i < rows.size(); i++) {
            if (work++ > mostWork) {
                return BigInteger.ZERO;
            }
            count = count.add(weight(place, rows, i));
        }
        return count;
    }

    private BigInteger weight(int place, Rows rows, int index) {
        int number = rows.number(index);
        BigInteger then = count(places.after(place, number, rows.uses(index)));
        int length = Powers.digits(Math.abs(number));
        return length == worth.length - 1 ? then : worth[length].multiply(then);
    }

    private Choice choice(int place) {
        Choice known = choices[place];
        if (known == null) {
            List<BigInteger> weights = new ArrayList<>();
            for (Rows rows : List.of(added(place), taken(place))) {
                for (int i = 0; i < rows.size(); i++) {
                    weights.add(weight(place, rows, i));
                }
            }
            known = Choice.of(weights);
            choices[place] = known;
        }
        return known;
    }
}
