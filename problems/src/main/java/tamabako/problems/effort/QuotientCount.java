package tamabako.problems.effort;

import tamabako.frame.Cause.Operand;
import tamabako.frame.Frame;
import tamabako.frame.Given;
import tamabako.frame.Precision;
import tamabako.problems.Quotient;

/// Counts quotients, worked as [tamabako.frame.quotient.QuotientWork] does with a trial by the
/// divisor's first digit.
final class QuotientCount {

    private final HandCount count = new HandCount();
    private final CountingHand hand = new CountingHand(count);
    private final int[] divisor;

    private QuotientCount(int[] divisor) {
        this.divisor = divisor;
    }

    static HandCount of(Quotient quotient) {
        if (quotient.dividend().signum() <= 0 || quotient.divisor().signum() <= 0) {
            return TraceCount.of(quotient);
        }
        Given dividend = new Given(Operand.DIVIDEND, quotient.dividend());
        Given divisor = new Given(Operand.DIVISOR, quotient.divisor());
        int first = dividend.wholeDigits() - divisor.wholeDigits() - 2;
        int stop = new Precision(quotient.places(), quotient.rounding()).lastRod();
        int lastOfDividend = dividend.lastPlace() - divisor.wholeDigits() - 1;
        int right = -Math.min(lastOfDividend, stop - divisor.count() - 1);
        if (divisor.count() + Math.max(first + 2, 0) + 2 + right > Frame.MOST_RODS) {
            return TraceCount.of(quotient);
        }
        QuotientCount work = new QuotientCount(divisor.digits());
        work.divide(dividend.digits(), first, stop);
        return work.count;
    }

    private void divide(int[] dividend, int first, int stop) {
        new CountingHand(count).set(0, divisor);
        hand.set(first, dividend);
        int leading = leading(first, stop);
        while (leading >= stop - 2) {
            int rod = isWithin(leading) ? leading + 2 : leading + 1;
            if (rod < stop) {
                return;
            }
            work(rod);
            leading = leading(rod - 1, stop);
        }
    }

    private int leading(int top, int stop) {
        int leading = top;
        while (leading >= stop - 2 && hand.digit(leading) == 0) {
            leading--;
        }
        return leading;
    }

    private boolean isWithin(int leading) {
        for (int i = 0; i < divisor.length; i++) {
            int compared = Integer.compare(hand.digit(leading - i), divisor[i]);
            if (compared != 0) {
                return compared > 0;
            }
        }
        return true;
    }

    /// Tries the digit on `rod`, takes its products off and makes it smaller where one cannot be
    /// taken. By this trial it is never too small.
    private void work(int rod) {
        int units = rod - 2;
        int digit = Math.clamp(hand.standing(units, rod - 1) / divisor[0], 1, 9);
        count.trial();
        hand.add(rod, digit);
        for (int index = 0; index < divisor.length; index++) {
            while (hand.standing(units - index, rod - 1) < digit * divisor[index]) {
                digit--;
                giveBack(rod, index);
            }
            hand.takeProduct(units - index + 1, digit * divisor[index]);
        }
    }

    private void giveBack(int rod, int used) {
        count.revision();
        hand.take(rod, 1);
        for (int i = 0; i < used; i++) {
            hand.add(rod - 2 - i, divisor[i]);
        }
    }
}
