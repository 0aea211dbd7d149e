package tamabako.frame.quotient;

import java.util.function.IntFunction;
import java.util.function.IntUnaryOperator;
import tamabako.frame.Cause;
import tamabako.frame.Hand;

/// One digit of a quotient at work: it is tried, multiplied by the divisor from the left and taken
/// off, and made smaller where a product cannot be taken.
///
/// What is divided stands right of the digit and nowhere else. Roots are divided out the same way,
/// so this serves them as well.
public final class QuotientDigit {

    /// What the steps are noted as.
    public interface Reasons {
        /// The trial digit is set.
        Cause set(int digit);

        /// `digit` times the divisor's digit number `index`, counted from 1 at the left, is taken.
        Cause taken(int digit, int index, int divisorDigit);

        /// The digit was too large and becomes `digit`.
        Cause revised(int digit);
    }

    private final Hand hand;
    private final Spot spot;
    private final int[] divisor;
    private final Reasons reasons;
    private int digit;

    public QuotientDigit(Hand hand, Spot spot, int[] divisor, Reasons reasons) {
        this.hand = hand;
        this.spot = spot;
        this.divisor = divisor.clone();
        this.reasons = reasons;
    }

    /// The digit now, 0 before it is tried.
    public int digit() {
        return digit;
    }

    /// Whether what stands right of the digit gives the divisor at least once.
    public boolean fits() {
        for (int rod = spot.rod() - 1; rod > spot.units(); rod--) {
            if (hand.digit(rod) > 0) {
                return true;
            }
        }
        for (int i = 0; i < divisor.length; i++) {
            int compared = Integer.compare(hand.digit(spot.units() - i), divisor[i]);
            if (compared != 0) {
                return compared > 0;
            }
        }
        return true;
    }

    /// Sets the trial digit: the leading digits by `first`, at least 1 and at most 9.
    public void tryBy(int first) {
        int leading = hand.standing(spot.units(), spot.rod() - 1);
        digit = Math.clamp(leading / first, 1, 9);
        hand.add(spot.rod(), digit, reasons.set(digit));
    }

    /// Takes the digit times every digit of the divisor, and revises the digit down where that
    /// cannot be.
    public void takeProducts() {
        for (int index = 1; index <= divisor.length; index++) {
            int units = spot.units() - index + 1;
            int against = divisor[index - 1];
            while (hand.standing(units, spot.rod() - 1) < digit * against) {
                lower(index - 1);
            }
            hand.takeProduct(units + 1, digit * against, reasons.taken(digit, index, against));
        }
    }

    /// After the products: revises the digit down until a number that goes with it, such as its
    /// square, can be taken as well. Its units would be taken from rod `units`.
    public void leaveRoomFor(IntUnaryOperator number, int units) {
        while (hand.standing(units, spot.rod() - 1) < number.applyAsInt(digit)) {
            lower(divisor.length);
        }
    }

    /// Makes the digit one smaller and gives back once the first `used` digits of the divisor, that
    /// were taken once too often (modoshizan).
    public void lower(int used) {
        digit--;
        Cause cause = reasons.revised(digit);
        hand.take(spot.rod(), 1, cause);
        for (int i = 0; i < used; i++) {
            hand.add(spot.units() - i, divisor[i], cause);
        }
    }

    /// Makes the digit one larger and takes the divisor once more.
    public void raise(IntFunction<Cause> reason) {
        digit++;
        Cause cause = reason.apply(digit);
        hand.add(spot.rod(), 1, cause);
        for (int i = 0; i < divisor.length; i++) {
            hand.take(spot.units() - i, divisor[i], cause);
        }
    }
}
