package tamabako.insight.slip;

import tamabako.problems.Mode;

/// The slips that can be made with the digits of a quotient, and with the products that are taken
/// off for them.
final class QuotientSlips {

    private static final double NINES_FOLLOW = 0.35;
    private static final double REST_RIGHT = 0.03;
    private static final double NOTHING_FOLLOWS = 0.3;
    private static final double REST_RIGHT_AFTER_LARGE = 0.03;
    private static final double READ_CLOSED = 0.6;
    private static final double SET_CLOSED = 0.4;
    private static final double OPENED = 0.1;

    private final long dividend;
    private final long divisor;
    private final long quotient;
    private final int lowest;
    private final Effect effect;
    private final Events events;

    /// @param dividend the dividend, so scaled that the worked quotient is whole
    /// @param lowest the power of ten of the worked quotient's last place
    /// @param effect what a change of the worked quotient does to the answer
    QuotientSlips(long dividend, long divisor, int lowest, Effect effect, Events events) {
        this.dividend = dividend;
        this.divisor = divisor;
        this.quotient = dividend / divisor;
        this.lowest = lowest;
        this.effect = effect;
        this.events = events;
    }

    /// Adds the slips of working; those of beads only on the frame.
    void add(Mode mode) {
        if (mode == Mode.FRAME) {
            beads();
        }
        for (int place = Tens.length(quotient) - 1; place >= 0; place--) {
            offByOne(place);
            places(place);
            for (int j = Tens.length(divisor) - 1; j >= 0; j--) {
                taken(place, j);
            }
        }
    }

    private void beads() {
        FastDivision division = new FastDivision(dividend, divisor);
        new BeadSlips(division.set(), lowest, effect, events).add();
        for (int place = Tens.length(quotient) - 1; place >= 0; place--) {
            int digit = place;
            new BeadSlips(
                            division.taken(),
                            division.start(place),
                            division.end(place),
                            lowest,
                            change -> tenthsFrom(digit, change),
                            events)
                    .add();
        }
    }

    /// What the rest's changing by `change` does to the answer while the digit at `place` is worked
    /// on: the digits before it stand.
    private long tenthsFrom(int place, long change) {
        long above = quotient / Tens.power(place + 1) * Tens.power(place + 1);
        if (dividend - above * divisor + change < 0) {
            return 0;
        }
        return tenths(above + capped(above, place + 1, change));
    }

    /// What the dividend's changing by `change` while it is worked does to the answer.
    long tenthsOfDividend(long change) {
        return dividend + change < 0 ? 0 : tenths((dividend + change) / divisor);
    }

    private long tenths(long worked) {
        return effect.tenths(worked - quotient);
    }

    private void offByOne(int place) {
        long unit = Tens.power(place);
        int digit = Tens.digit(quotient, place);
        long above = quotient / unit * unit;
        long code =
                Code.with(Code.of(Way.QUOTIENT_TOO_SMALL, Code.answer(), place + lowest), digit);
        if (digit > 0) {
            events.add(tenths(above - unit + capped(above - unit, place, 0)), code, NINES_FOLLOW);
            events.add(tenths(quotient - unit), code, REST_RIGHT);
        }
        if (digit < 9) {
            code = Code.with(Code.of(Way.QUOTIENT_TOO_LARGE, Code.answer(), place + lowest), digit);
            events.add(tenths(above + unit), code, NOTHING_FOLLOWS);
            events.add(tenths(quotient + unit), code, REST_RIGHT_AFTER_LARGE);
        }
    }

    /// The digits below `place` that a hand finds which sets no digit above nine, even where the
    /// remainder is too large for them: nines follow.
    ///
    /// @param set the quotient so far
    /// @param change by how much the dividend has become another on the way
    private long capped(long set, int place, long change) {
        long remainder = dividend + change - set * divisor;
        long digits = 0;
        for (int below = place - 1; below >= 0; below--) {
            long digit = Math.min(9, remainder / (divisor * Tens.power(below)));
            digits += digit * Tens.power(below);
            remainder -= digit * divisor * Tens.power(below);
        }
        return digits;
    }

    private void places(int place) {
        long high = quotient / Tens.power(place + 1);
        long low = quotient % Tens.power(place);
        if (Tens.digit(quotient, place) == 0 && high > 0) {
            long code = Code.of(Way.QUOTIENT_PLACE_CLOSED, Code.answer(), place + lowest);
            int mark = events.mark();
            events.add(tenths(high * Tens.power(place) + low), code, READ_CLOSED);
            events.add(tenths(high * Tens.power(place + 1) + low * 10), code, SET_CLOSED);
            events.share(mark, 1);
        }
        if (place > 0 && place < Tens.length(quotient)) {
            long opened = quotient / Tens.power(place) * Tens.power(place + 1) + low;
            long code = Code.of(Way.QUOTIENT_PLACE_OPENED, Code.answer(), place + lowest);
            events.add(tenths(opened), code, OPENED);
        }
    }

    /// Quotient digit times divisor digit `j` is taken off the rest of the dividend.
    private void taken(int place, int j) {
        int first = Tens.digit(quotient, place);
        int second = Tens.digit(divisor, j);
        if (first == 0 || second == 0) {
            return;
        }
        int rod = place + j;
        long unit = Tens.power(rod);
        long product = (long) first * second * unit;
        long done = quotient / Tens.power(place + 1) * Tens.power(place + 1) * divisor;
        long before = first * Tens.power(place) * (divisor - divisor % Tens.power(j + 1));
        long rest = dividend - done - before;
        TableSlips.add(
                first,
                second,
                rod + lowest,
                wrong -> instead(place, product, wrong * unit, rest),
                events);
        int where = Code.product(first, second);
        int mark = events.mark();
        misplaced(
                Way.PRODUCT_ONE_ROD_LEFT, where, rod, instead(place, product, 10 * product, rest));
        misplaced(
                Way.PRODUCT_ONE_ROD_RIGHT, where, rod, instead(place, product, product / 10, rest));
        events.share(mark, 1);
        misplaced(Way.PRODUCT_SKIPPED, where, rod, instead(place, product, 0, rest));
    }

    private void misplaced(Way way, int where, int rod, long tenths) {
        events.add(tenths, Code.of(way, where, rod + lowest), 1);
    }

    /// `wrong` is taken off instead of `product`; it must be there.
    private long instead(int place, long product, long wrong, long rest) {
        return wrong > rest ? 0 : tenthsFrom(place, product - wrong);
    }
}
