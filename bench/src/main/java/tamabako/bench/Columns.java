package tamabako.bench;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import tamabako.frame.walk.PackedNumber;

/// Columns to measure with, the same ones in every run: ten rows of ten digits, three in ten of
/// them taken, the total never below zero.
final class Columns {

    /// How many columns one operation works.
    static final int PROBLEMS = 64;

    static final int ROWS = 10;

    private static final long SEED = 20260401;

    private final long[][] plain = new long[PROBLEMS][ROWS];

    Columns() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (long[] column : plain) {
            long total = 0;
            for (int i = 0; i < ROWS; i++) {
                long row = random.nextLong(1_000_000_000L, 10_000_000_000L);
                column[i] = random.nextInt(10) < 3 && total >= row ? -row : row;
                total += column[i];
            }
        }
    }

    long[][] plain() {
        return plain;
    }

    long[][] packed() {
        return Arrays.stream(plain)
                .map(column -> Arrays.stream(column).map(PackedNumber::pack).toArray())
                .toArray(long[][]::new);
    }

    BigInteger[][] big() {
        return Arrays.stream(plain)
                .map(column ->
                        Arrays.stream(column)
                                .mapToObj(BigInteger::valueOf)
                                .toArray(BigInteger[]::new))
                .toArray(BigInteger[][]::new);
    }

    List<List<BigDecimal>> decimal() {
        return Arrays.stream(plain)
                .map(column -> Arrays.stream(column).mapToObj(BigDecimal::valueOf).toList())
                .toList();
    }
}
