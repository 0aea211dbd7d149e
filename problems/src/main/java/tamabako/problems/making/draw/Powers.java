package tamabako.problems.making.draw;

/// Powers of ten and lengths of numbers, as far as a `long` goes.
public final class Powers {

    private static final long[] POWERS = new long[19];

    static {
        POWERS[0] = 1;
        for (int i = 1; i < POWERS.length; i++) {
            POWERS[i] = 10 * POWERS[i - 1];
        }
    }

    private Powers() {}

    /// `10^exponent`, for 0 to 18.
    public static long of(int exponent) {
        return POWERS[exponent];
    }

    /// How many digits `number` has, 1 for zero; it must not be below zero.
    public static int digits(long number) {
        int digits = 1;
        while (digits < POWERS.length && number >= POWERS[digits]) {
            digits++;
        }
        return digits;
    }
}
