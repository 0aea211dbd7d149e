package tamabako.insight.slip;

/// Digits of whole numbers by their place, counted from 0 at the right.
final class Tens {

    /// The most digits that the finder works with: ten times such a number, and sums of hundreds of
    /// them, still fit a `long`.
    static final int MOST_DIGITS = 16;

    private static final long[] POWERS = new long[19];

    static {
        POWERS[0] = 1;
        for (int place = 1; place < POWERS.length; place++) {
            POWERS[place] = 10 * POWERS[place - 1];
        }
    }

    private Tens() {}

    /// `10^place`, up to 18.
    static long power(int place) {
        return POWERS[place];
    }

    /// How many digits `number`, which is not negative, has; zero has 1.
    static int length(long number) {
        int length = 1;
        while (length < POWERS.length && number >= POWERS[length]) {
            length++;
        }
        return length;
    }

    /// The digit of `number`, which is not negative, at `place`.
    static int digit(long number, int place) {
        return (int) (number / POWERS[place] % 10);
    }
}
