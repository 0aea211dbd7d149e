package tamabako.insight.slip;

import java.util.Arrays;

/// The other answers that may have stood on the frame where the pencil slipped as well: from what
/// was written back to what was meant.
final class PencilCauses {

    private long[] meant = new long[512];
    private int size;

    private PencilCauses() {}

    /// The answers from which one slip of the pencil may lead to `written`, both in units of the
    /// last place; whether it does is for [WrittenSlips] to say.
    static long[] of(long written) {
        PencilCauses causes = new PencilCauses();
        causes.collect(Math.abs(written), written < 0 ? -1 : 1);
        return Arrays.stream(causes.meant, 0, causes.size)
                .sorted()
                .distinct()
                .filter(number -> number != written)
                .toArray();
    }

    private void collect(long figures, int sign) {
        int length = Tens.length(figures);
        for (int place = 0; place < length; place++) {
            long unit = Tens.power(place);
            int digit = Tens.digit(figures, place);
            long high = figures / (10 * unit);
            long low = figures % unit;
            for (int other = 0; other <= 9; other++) {
                note(sign * (figures + (other - digit) * unit));
            }
            if (place + 1 < length) {
                note(sign * (figures + 9 * unit * (digit - Tens.digit(figures, place + 1))));
            }
            note(sign * (high * unit + low));
        }
        for (int place = 0; place <= length && length < Tens.MOST_DIGITS; place++) {
            long unit = Tens.power(place);
            for (int other = 0; other <= 9; other++) {
                note(sign * ((figures / unit * 10 + other) * unit + figures % unit));
            }
        }
        if (figures % 10 == 0) {
            note(sign * figures / 10);
        }
    }

    private void note(long number) {
        if (size < meant.length) {
            meant[size++] = number;
        }
    }
}
