package tamabako.insight.slip;

/// Slips of eye or ear within one number: a digit misread or misheard, a digit left out, two digits
/// swapped.
final class ReadingSlips {

    /// No number begins with 0, so 40 is read as 04 so many times more seldom than 41 as 14.
    private static final double ZERO_FIRST = 0.1;

    private final int where;
    private final int lowest;
    private final boolean heard;
    private final Effect effect;
    private final Events events;

    /// @param where the packed part of the sum that the number is
    /// @param lowest the power of ten of the number's last place
    /// @param heard whether the number is called, not read
    /// @param effect what a change of the number does to the answer
    ReadingSlips(int where, int lowest, boolean heard, Effect effect, Events events) {
        this.where = where;
        this.lowest = lowest;
        this.heard = heard;
        this.effect = effect;
        this.events = events;
    }

    /// Adds the slips of reading `number`, which may be below zero.
    void add(long number) {
        int sign = number < 0 ? -1 : 1;
        long high = Math.abs(number);
        int place = 0;
        do {
            int digit = (int) (high % 10);
            high /= 10;
            events.after(where, place);
            DigitSlips.of(digit, heard).add(sign * Tens.power(place), at(place), effect, events);
            if (high > 0) {
                swapped(place, high, digit, sign);
            }
            place++;
        } while (high > 0);
    }

    /// Adds those slips of reading `number` that make the difference `sought`, where a change of
    /// the number changes the answer as much.
    void add(long number, Sought sought) {
        int place = sought.place();
        int sign = number < 0 ? -1 : 1;
        long high = Math.abs(number) / Tens.power(place);
        if (high == 0 && place > 0) {
            return;
        }
        int digit = (int) (high % 10);
        events.after(where, place);
        if (sought.isOfOneDigit()) {
            DigitSlips.of(digit, heard).add(sign * Tens.power(place), at(place), effect, events);
        }
        if (sought.isNinefold() && high > 9) {
            swapped(place, high / 10, digit, sign);
        }
    }

    private long at(int place) {
        return Code.place(where, place + lowest);
    }

    private void swapped(int place, long leftOf, int digit, int sign) {
        int left = (int) (leftOf % 10);
        boolean first = leftOf < 10;
        long change = 9L * sign * (digit - left) * Tens.power(place);
        long code = Code.with(Code.of(Way.DIGITS_SWAPPED, where, place + lowest), left, digit);
        events.add(effect.tenths(change), code, swappedWeighs(digit, first));
    }

    /// The weight of two digits of a number swapped.
    ///
    /// @param digit the right one of them
    /// @param first whether the left one is the first of the number
    static double swappedWeighs(int digit, boolean first) {
        return Weights.of(Way.DIGITS_SWAPPED) * (first && digit == 0 ? ZERO_FIRST : 1);
    }
}
