package tamabako.problems.making.column;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.frame.Technique;

/// Proves that there is no column, where that can be proved: by a contradiction, by counting, or by
/// looking at every column.
final class Proof {

    private static final int MOST_LISTED = 20_000;
    private static final long LISTING_WORK = 200_000;

    private Proof() {}

    /// Whether it is proved that no column is as asked, with at most `mostWork` ways followed.
    static boolean isThereNone(Asked asked, long mostWork) {
        return Contradictions.areIn(asked)
                || hasNoneWithoutCarry(asked)
                || DeadEnds.look(asked, mostWork) == DeadEnds.Finding.NO_COLUMN
                || noneOfAllIs(asked);
    }

    /// Counts those with all required techniques: all, less those that lack one, and so on.
    private static boolean hasNoneWithoutCarry(Asked asked) {
        if (RodCounts.of(asked).isEmpty()) {
            return false;
        }
        List<Technique> required = new ArrayList<>(asked.required());
        BigInteger there = BigInteger.ZERO;
        for (int left = 0; left < 1 << required.size(); left++) {
            Asked without = asked;
            for (int i = 0; i < required.size(); i++) {
                if (((left >> i) & 1) == 1) {
                    without = forbidding(without, required.get(i));
                }
            }
            BigInteger count = RodCounts.of(without).map(RodCounts::count).orElseThrow();
            there = Integer.bitCount(left) % 2 == 0 ? there.add(count) : there.subtract(count);
        }
        return there.signum() == 0;
    }

    private static Asked forbidding(Asked asked, Technique technique) {
        List<Condition> changed = new ArrayList<>(asked.conditions());
        changed.add(new HandCondition.TechniqueCount(technique, 0, 0));
        return asked.with(changed);
    }

    private static boolean noneOfAllIs(Asked asked) {
        Optional<List<long[]>> all = all(asked, MOST_LISTED);
        return all.isPresent() && all.get().isEmpty();
    }

    /// All columns that are as asked, where there are at most `limit` with the signs and techniques
    /// asked for.
    static Optional<List<long[]>> all(Asked asked, int limit) {
        return Completions.of(asked, LISTING_WORK)
                .map(counts -> counts.all(asked.shape().rows(), limit + 1))
                .filter(all -> all.size() <= limit)
                .map(all -> granted(asked, all));
    }

    private static List<long[]> granted(Asked asked, List<long[]> all) {
        Checks checks = new Checks(asked.conditions());
        Facts facts = asked.facts();
        List<long[]> granted = new ArrayList<>();
        for (long[] numbers : all) {
            for (int row = 0; row < numbers.length; row++) {
                facts.setNumber(row, numbers[row]);
            }
            if (checks.areMet(facts)) {
                granted.add(numbers);
            }
        }
        return granted;
    }
}
