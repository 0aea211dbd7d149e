package tamabako.problems;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import tamabako.frame.Rounding;
import tamabako.frame.Setup;
import tamabako.frame.Unworkable;
import tamabako.frame.Working;
import tamabako.frame.quotient.QuotientWork;

/// A division (warizan): dividend (jitsu) by divisor (hō), to the places that the terms ask for, 0
/// if they ask for none. Rounded down, it has a remainder.
public record Quotient(String id, BigDecimal dividend, BigDecimal divisor, Terms terms)
        implements Problem {

    public Quotient {
        if (divisor.signum() == 0) {
            throw new Unworkable(new Unworkable.Reason.ZeroDivisor(dividend.toPlainString()));
        }
    }

    @Override
    public Answer answer() {
        BigDecimal value = dividend.divide(divisor, places(), rounding().mode());
        if (rounding() == Rounding.HALF_UP) {
            return Answer.of(value);
        }
        BigDecimal down = dividend.divide(divisor, places(), RoundingMode.DOWN);
        return new Answer(down, Optional.of(dividend.subtract(down.multiply(divisor))));
    }

    @Override
    public Working work(Setup setup) {
        return QuotientWork.work(dividend, divisor, places(), rounding(), setup);
    }

    @Override
    public Quotient withId(String changed) {
        return new Quotient(changed, dividend, divisor, terms);
    }

    /// The decimal places that it is worked to: as the terms ask. If they ask for no places,
    /// rounding or unit, a quotient of decimals is worked to its end where it has one, and every
    /// other to the whole number.
    public int places() {
        return terms.places().orElseGet(this::usualPlaces);
    }

    private int usualPlaces() {
        boolean decimals = Math.max(dividend.scale(), divisor.scale()) > 0;
        if (!decimals || terms.unit().isPresent() || terms.rounding().isPresent()) {
            return 0;
        }
        BigDecimal quotient = dividend.divide(divisor, Terms.MOST_PLACES, RoundingMode.DOWN);
        boolean ends = quotient.multiply(divisor).compareTo(dividend) == 0;
        return ends ? Math.max(0, quotient.stripTrailingZeros().scale()) : 0;
    }
}
