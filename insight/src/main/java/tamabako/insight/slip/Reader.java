package tamabako.insight.slip;

import tamabako.frame.Rounding;

/// How an exact result is read as the answer: `dropped` places are rounded away.
record Reader(int dropped, Rounding rounding) {

    /// What a change of `exact` does to the answer.
    Effect effectOn(long exact) {
        long right = read(exact);
        return change -> 10 * (read(exact + change) - right);
    }

    /// The answer in units of its last place.
    long read(long exact) {
        if (dropped <= 0) {
            return exact * Tens.power(-dropped);
        }
        long unit = Tens.power(dropped);
        return switch (rounding) {
            case HALF_UP -> (exact + Long.signum(exact) * (unit / 2)) / unit;
            case DOWN -> exact / unit;
        };
    }
}
