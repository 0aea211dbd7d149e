package tamabako.frame.quotient;

import java.util.OptionalInt;
import tamabako.frame.Cause;
import tamabako.frame.Hand;
import tamabako.frame.TrialRule;

/// Modern division (shōjohō) of a number that stands on a frame.
///
/// The divisor is compared with as many leading digits of what is divided. If it is not larger, the
/// quotient digit goes two rods left of the first of them (rule I), else one rod left (rule II).
/// Source: Heffelfinger and Flom, Abacus: Mystery of the Bead, division; Using an Abacus,
/// Wikibooks, modern division.
public final class Division {

    private final Hand hand;
    private final int[] divisor;
    private final TrialRule rule;
    private final int unit;

    /// @param divisor the significant digits of the divisor from the left, the first not 0
    /// @param unit the rod of the quotient's units, from which causes count places
    public Division(Hand hand, int[] divisor, TrialRule rule, int unit) {
        this.hand = hand;
        this.divisor = divisor.clone();
        this.rule = rule;
        this.unit = unit;
    }

    /// Divides what stands on rod `top` and right of it, as long as quotient digits fall on rod
    /// `stop` or left of it.
    ///
    /// What is left after a digit on rod q with m digits of the divisor is less than `divisor *
    /// 10^(q - m - 1)`, so the next digit falls right of q: no digit meets another.
    public void divide(int top, int stop) {
        int from = top;
        OptionalInt rod = next(from, stop);
        while (rod.isPresent()) {
            work(rod.getAsInt());
            from = rod.getAsInt() - 1;
            rod = next(from, stop);
        }
    }

    private OptionalInt next(int top, int stop) {
        int leading = top;
        while (leading >= stop - 2 && hand.digit(leading) == 0) {
            leading--;
        }
        if (leading < stop - 2) {
            return OptionalInt.empty();
        }
        int rod = isWithin(leading) ? leading + 2 : leading + 1;
        return rod < stop ? OptionalInt.empty() : OptionalInt.of(rod);
    }

    /// Whether the divisor is not larger than as many digits from rod `leading`.
    private boolean isWithin(int leading) {
        for (int i = 0; i < divisor.length; i++) {
            int compared = Integer.compare(hand.digit(leading - i), divisor[i]);
            if (compared != 0) {
                return compared > 0;
            }
        }
        return true;
    }

    private void work(int rod) {
        int place = rod - unit;
        QuotientDigit digit = new QuotientDigit(hand, Spot.of(rod), divisor, new OfQuotient(place));
        digit.tryBy(first());
        digit.takeProducts();
        while (digit.fits()) {
            digit.raise(larger -> new Cause.RevisedUp(place, larger));
        }
    }

    /// What the leading digits are divided by to find the trial digit: 1 to 10.
    private int first() {
        return switch (rule) {
            case FIRST_DIGIT -> divisor[0];
            case ROUNDED_FIRST_DIGIT ->
                    divisor.length > 1 && divisor[1] >= 5 ? divisor[0] + 1 : divisor[0];
        };
    }

    private record OfQuotient(int place) implements QuotientDigit.Reasons {
        @Override
        public Cause set(int digit) {
            return new Cause.TrialDigit(place, digit);
        }

        @Override
        public Cause taken(int digit, int index, int divisorDigit) {
            return new Cause.ProductTaken(place, digit, index, divisorDigit);
        }

        @Override
        public Cause revised(int digit) {
            return new Cause.RevisedDown(place, digit);
        }
    }
}
