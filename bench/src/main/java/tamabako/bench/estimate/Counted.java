package tamabako.bench.estimate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import tamabako.frame.Technique;
import tamabako.frame.walk.ColumnWalk;
import tamabako.frame.walk.PackedNumber;

/// A column, and what is counted on it before anybody works it.
///
/// @param rows negative where they are taken
/// @param counts how many steps by each technique, in the order of [Technique], then digits;
///   carries and borrows are no more than the steps by ten
record Counted(List<Long> rows, List<Integer> counts) {

    private static final int MINUS_IN_TEN = 3;

    /// A drawn column of 3 to 10 rows of 1 to 5 digits, of which about three in ten are taken.
    static Counted drawn(SplittableRandom chance) {
        int digits = chance.nextInt(1, 6);
        long least = Math.powExact(10L, digits - 1);
        List<Long> rows = new ArrayList<>();
        long total = 0;
        for (int left = chance.nextInt(3, 11); left > 0; left--) {
            long row = chance.nextLong(least, 10 * least);
            row = chance.nextInt(10) < MINUS_IN_TEN && total >= row ? -row : row;
            total += row;
            rows.add(row);
        }
        return of(rows, digits);
    }

    private static Counted of(List<Long> rows, int digits) {
        ColumnWalk walk = new ColumnWalk();
        walk.walk(rows.stream().mapToLong(PackedNumber::pack).toArray(), rows.size());
        List<Integer> counts = new ArrayList<>();
        Arrays.stream(Technique.values()).map(walk.tally()::count).forEach(counts::add);
        counts.add(digits * rows.size());
        return new Counted(List.copyOf(rows), List.copyOf(counts));
    }

    /// Each count in tens.
    List<Double> plain() {
        return counts.stream().map(count -> count / 10.0).toList();
    }

    /// The logarithm of one more than each count.
    List<Double> logarithms() {
        return counts.stream().map(Math::log1p).toList();
    }

    int digits() {
        return counts.getLast();
    }
}
