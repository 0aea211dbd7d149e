package tamabako.insight.slip;

/// Slips of eye or ear within one number: a digit misread or misheard, a digit left out, two digits
/// swapped.
final class ReadingSlips {

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
        long size = Math.abs(number);
        int length = Tens.length(size);
        for (int place = 0; place < length; place++) {
            int digit = Tens.digit(size, place);
            events.after(where, place);
            misread(place, digit, sign);
            if (digit != 0) {
                change(Way.DIGIT_SKIPPED, place, -sign * digit, digit);
            }
            if (place + 1 < length) {
                int left = Tens.digit(size, place + 1);
                long change = 9L * sign * (digit - left) * Tens.power(place);
                long code = Code.of(Way.DIGITS_SWAPPED, where, place + lowest);
                events.add(effect.tenths(change), Code.with(code, left, digit));
            }
        }
    }

    private void misread(int place, int digit, int sign) {
        Way way = heard ? Way.DIGIT_MISHEARD : Way.DIGIT_MISREAD;
        long code = Code.of(way, where, place + lowest);
        long unit = sign * Tens.power(place);
        for (int as = 0; as <= 9; as++) {
            if (as != digit) {
                events.add(
                        effect.tenths((as - digit) * unit),
                        Code.with(code, digit, as),
                        heard ? Weights.misheard(digit, as) : Weights.misread(digit, as));
            }
        }
    }

    private void change(Way way, int place, int change, int digit) {
        long code = Code.of(way, where, place + lowest);
        events.add(effect.tenths(change * Tens.power(place)), Code.with(code, digit));
    }
}
