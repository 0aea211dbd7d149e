package tamabako.insight.slip;

/// Slips of the pencil: the beads were right, the figures are not.
final class WrittenSlips {

    /// A difference that no other figure on a place makes.
    private static final Sought HALVES = Sought.of(5);

    private final long figures;
    private final int places;
    private final long unit;
    private final int sign;
    private final Events events;

    /// @param answer the right answer in tenths of its last place
    /// @param places how many decimal places the tenths are: one more than the answer may have
    WrittenSlips(long answer, int places, Events events) {
        long left = Math.abs(answer);
        int decimals = places;
        long step = 1;
        // Zeros at the end of decimals are not written, and the tenths themselves never are.
        while (decimals > 0 && left % 10 == 0) {
            left /= 10;
            step *= 10;
            decimals--;
        }
        this.figures = left;
        this.places = decimals;
        this.unit = step;
        this.sign = answer < 0 ? -1 : 1;
        this.events = events;
    }

    /// Adds the slips of writing the answer.
    void add() {
        int length = length();
        for (int place = 0; place < length; place++) {
            digit(place, place == length - 1 && length > 1);
            if (place + 1 < length) {
                swapped(place, place + 2 == length);
            }
        }
        lengths(length);
    }

    /// Adds those that change the answer by `tenths`.
    void add(long tenths) {
        int length = length();
        Sought change = tenths % unit == 0 ? Sought.of(10L * sign * (tenths / unit)) : HALVES;
        int place = change.place();
        if (change.isOfOneDigit() && place < length) {
            digit(place, place == length - 1 && length > 1);
        }
        if (change.isNinefold() && place + 1 < length) {
            swapped(place, place + 2 == length);
        }
        // A whole number with a figure more or less is off by more than its half.
        if (places > 0 || 2 * Math.abs(tenths) > unit * figures) {
            lengths(length);
        }
    }

    private int length() {
        return Math.max(Tens.length(figures), places + 1);
    }

    private void lengths(int length) {
        int mark = events.mark();
        for (int place = 0; place < length && length > 1; place++) {
            if (!asLeft(place, length)) {
                dropped(place);
                twice(place);
            }
        }
        point();
        events.share(mark, 1);
    }

    private void digit(int place, boolean first) {
        int digit = Tens.digit(figures, place);
        long code = Code.of(Way.WRITTEN_DIGIT, Code.answer(), place - places);
        int mark = events.mark();
        for (int written = first && places == 0 ? 1 : 0; written <= 9; written++) {
            long change = (written - digit) * Tens.power(place);
            if (written != digit) {
                events.add(sign * unit * change, Code.with(code, digit, written));
            }
        }
        events.share(mark, 1);
    }

    private void swapped(int place, boolean first) {
        int left = Tens.digit(figures, place + 1);
        int right = Tens.digit(figures, place);
        if (left == right || (first && right == 0 && places == 0)) {
            return;
        }
        long code = Code.of(Way.WRITTEN_SWAPPED, Code.answer(), place - places);
        long change = 9L * (right - left) * Tens.power(place);
        events.add(sign * unit * change, Code.with(code, left, right));
    }

    /// Whether the digit on the left, on the same side of the point, is the same: then it makes no
    /// difference which of the two is dropped.
    private boolean asLeft(int place, int length) {
        return place + 1 < length
                && place + 1 != places
                && Tens.digit(figures, place) == Tens.digit(figures, place + 1);
    }

    /// Left of the point the figures close up to the right, after it to the left.
    private void dropped(int place) {
        long high = figures / Tens.power(place + 1);
        long low = figures % Tens.power(place);
        long left =
                place >= places
                        ? high * Tens.power(place) + low
                        : high * Tens.power(place + 1) + low * 10;
        write(Way.WRITTEN_DIGIT_DROPPED, place, left);
    }

    private void twice(int place) {
        if (place >= places) {
            long high = figures / Tens.power(place);
            long digit = high % 10 * Tens.power(place);
            long low = figures % Tens.power(place);
            write(Way.WRITTEN_DIGIT_TWICE, place, high * Tens.power(place + 1) + digit + low);
        }
    }

    private void write(Way way, int place, long written) {
        long code = Code.of(way, Code.answer(), place - places);
        long change = sign * unit * (written - figures);
        events.add(change, Code.with(code, Tens.digit(figures, place)));
    }

    private void point() {
        long answer = sign * unit * figures;
        events.add(9 * answer, Code.of(Way.WRITTEN_POINT_RIGHT, Code.answer()));
        if (answer % 10 == 0) {
            events.add(answer / 10 - answer, Code.of(Way.WRITTEN_POINT_LEFT, Code.answer()));
        }
    }
}
