package tamabako.insight.simulation;

import java.util.OptionalLong;
import tamabako.insight.slip.SlipKind;

/// A simulated pupil who divides two whole numbers digit by digit and slips where fate will have
/// it.
///
/// A digit that proves too small is raised as long as it can be, and nines follow it where it was
/// left so; where a product cannot be taken the pupil is stuck.
public final class QuotientPupil {

    private final Fate fate;
    private final BeadFrame rest;
    private final BeadFrame quotient;
    private final TableMemory table;
    private boolean stopped;

    private QuotientPupil(Fate fate) {
        this.fate = fate;
        this.rest = new BeadFrame(fate);
        this.quotient = new BeadFrame(fate);
        this.table = new TableMemory(fate);
    }

    /// What the pupil writes; nothing if the pupil is stuck.
    public static OptionalLong writes(long dividend, long divisor, Fate fate) {
        QuotientPupil pupil = new QuotientPupil(fate);
        try {
            OperandReader reader = new OperandReader(fate);
            pupil.rest.show(reader.sets(dividend));
            long by = reader.sets(divisor);
            if (by == 0) {
                return OptionalLong.empty();
            }
            int places = Long.toString(pupil.rest.read() / by).length();
            for (int place = places - 1; place >= 0 && !pupil.stopped; place--) {
                pupil.digit(by, place);
            }
        } catch (BeadFrame.Stuck _) {
            return OptionalLong.empty();
        }
        return OptionalLong.of(new Pencil(fate).writes(pupil.closed(pupil.quotient.read())));
    }

    /// An empty place is missed when the quotient is read.
    private long closed(long quotient) {
        String figures = Long.toString(quotient);
        for (int at = 1; at < figures.length(); at++) {
            int place = figures.length() - 1 - at;
            if (figures.charAt(at) == '0'
                    && fate.falls(SlipKind.QUOTIENT_PLACE_MISSED, 0, place, 1)) {
                return Long.parseLong(figures.substring(0, at) + figures.substring(at + 1));
            }
        }
        return quotient;
    }

    private void digit(long divisor, int place) {
        long unit = Math.powExact(10L, place);
        int digit = (int) Math.min(9, rest.read() / (divisor * unit));
        boolean small = digit > 0 && fate.falls(SlipKind.QUOTIENT_OFF_BY_ONE, 0, place, 0.35);
        boolean large = digit < 9 && fate.falls(SlipKind.QUOTIENT_OFF_BY_ONE, 0, place, 0.3);
        int tried = small ? digit - 1 : large ? digit + 1 : digit;
        quotient.add(0, place, tried);
        if (large) {
            stopped = true;
            return;
        }
        int taken = takeAll(divisor, tried, place);
        if (!small) {
            raise(divisor * unit, taken, unit);
        }
    }

    /// Takes the products off; where one cannot be, the digit is made smaller and what was taken
    /// too much is given back. Gives the digit that remains.
    private int takeAll(long divisor, int tried, int place) {
        String by = Long.toString(divisor);
        int digit = tried;
        for (int at = 0; at < by.length() && digit > 0; at++) {
            int second = by.charAt(at) - '0';
            int rod = place + by.length() - 1 - at;
            while (second > 0 && digit > 0 && !take(digit, second, rod)) {
                digit--;
                long unit = Math.powExact(10L, place);
                quotient.show(quotient.read() - unit);
                long used = divisor - divisor % Math.powExact(10L, rod + 1 - place);
                rest.show(rest.read() + used * unit);
            }
        }
        return digit;
    }

    private boolean take(int first, int second, int rod) {
        int product = table.recalls(first, second, rod);
        int at = rod;
        if (fate.falls(SlipKind.PRODUCT_SKIPPED, 0, rod, 1)) {
            return true;
        }
        if (fate.falls(SlipKind.PRODUCT_MISPLACED, 0, rod, 0.5)) {
            at++;
        } else if (rod > 0 && fate.falls(SlipKind.PRODUCT_MISPLACED, 0, rod, 0.5)) {
            at--;
        }
        if (rest.read() < product * Math.powExact(10L, at)) {
            return false;
        }
        rest.take(0, at + 1, product / 10);
        rest.take(0, at, product % 10);
        return true;
    }

    /// The remainder is as large as the divisor: the digit is raised, but not above nine; where an
    /// earlier digit was too small, nines follow.
    private void raise(long divisor, int tried, long unit) {
        int digit = tried;
        while (rest.read() >= divisor && digit < 9) {
            digit++;
            rest.show(rest.read() - divisor);
            quotient.show(quotient.read() + unit);
        }
    }
}
