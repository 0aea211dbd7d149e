package tamabako.frame.quotient;

import java.math.BigDecimal;
import tamabako.frame.Cause.Operand;
import tamabako.frame.Frame;
import tamabako.frame.Given;
import tamabako.frame.Hand;
import tamabako.frame.Outcome;
import tamabako.frame.Precision;
import tamabako.frame.Room;
import tamabako.frame.Rounding;
import tamabako.frame.Setup;
import tamabako.frame.Unworkable;
import tamabako.frame.Working;

/// Works a quotient on a frame by modern division.
///
/// The divisor stands at the far left. With N = whole digits of the dividend - (whole digits of the
/// divisor + 1), the dividend's first digit stands on rod N, where N = 1 is the unit rod, 2 the rod
/// left of it, 0 the rod right of it; the quotient's units then fall on the unit rod. Source: F.
/// Kato's method in Heffelfinger and Flom, Abacus: Mystery of the Bead.
public final class QuotientWork {

    private QuotientWork() {}

    /// Works the quotient to `places`, 0 to 12. Rounded half up, one place more is worked; rounded
    /// down, the outcome has a remainder.
    ///
    /// @throws Unworkable if the divisor is zero, a number is below zero, `places` is out of range,
    ///   or more rods are needed than the frame has
    public static Working work(
            BigDecimal dividend, BigDecimal divisor, int places, Rounding rounding, Setup setup) {
        if (divisor.signum() == 0) {
            String shown = new Given(Operand.DIVIDEND, dividend).figures();
            throw new Unworkable(new Unworkable.Reason.ZeroDivisor(shown));
        }
        Precision precision = new Precision(places, rounding);
        return work(
                new Given(Operand.DIVIDEND, dividend),
                new Given(Operand.DIVISOR, divisor),
                precision,
                setup);
    }

    private static Working work(Given dividend, Given divisor, Precision precision, Setup setup) {
        int firstRod = dividend.wholeDigits() - divisor.wholeDigits() - 2;
        Frame clear = room(dividend, divisor, firstRod, precision).clear(setup);
        Hand setter = new Hand(clear, setup.habits());
        divisor.set(setter, clear.highest());
        dividend.set(setter, firstRod);
        Hand hand = new Hand(setter.frame(), setup.habits());
        new Division(hand, divisor.digits(), setup.habits().trialRule(), 0)
                .divide(firstRod, precision.lastRod());
        Outcome outcome = read(hand.frame(), divisor, precision);
        return new Working(setter.trace(), hand.trace(), outcome);
    }

    /// The divisor, a gap of four rods, three if there is no room, then the dividend; the quotient
    /// may begin two rods left of the dividend. At the right the product of the last quotient digit
    /// with the last digit of the divisor must find its rods.
    private static Room room(Given dividend, Given divisor, int firstRod, Precision precision) {
        int left = divisor.count() + 1 + Math.max(firstRod + 2, 0) + 1;
        int lastOfDividend = dividend.lastPlace() - divisor.wholeDigits() - 1;
        int lastOfProduct = precision.lastRod() - divisor.count() - 1;
        return new Room(
                dividend.figures() + " ÷ " + divisor.figures(),
                left,
                1,
                -Math.min(lastOfDividend, lastOfProduct),
                0);
    }

    /// The quotient stands on the rods down to the last one worked; what is left stands right of
    /// them, and is read by the dividend's own places.
    private static Outcome read(Frame end, Given divisor, Precision precision) {
        int lastRod = precision.lastRod();
        BigDecimal quotient = end.value(lastRod, end.highest() - divisor.count());
        BigDecimal left = end.value(end.lowest(), lastRod - 1);
        return precision.outcome(quotient, left.scaleByPowerOfTen(divisor.wholeDigits() + 1));
    }
}
