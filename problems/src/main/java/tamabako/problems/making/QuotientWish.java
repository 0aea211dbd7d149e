package tamabako.problems.making;

import java.util.List;

/// Quotients (warizan). No divisor is 1 or ends in 0; common practice, no published source.
///
/// Where an answer is rounded, it is the rounded quotient that has the digits asked for.
///
/// @param digits digits of divisor and quotient together
/// @param divisor digits of the divisor (hō), within 1 to 15
/// @param quotient digits of the quotient (shō), within 1 to 15
/// @param numbers what sort of numbers they are
/// @param customs what the set keeps to besides
public record QuotientWish(
        int digits, Digits divisor, Digits quotient, Numbers numbers, List<Custom> customs)
        implements Wish {

    public QuotientWish {
        customs = List.copyOf(customs);
    }

    /// Exact quotients of whole numbers of so many digits.
    public QuotientWish(int divisorDigits, int quotientDigits) {
        this(
                divisorDigits + quotientDigits,
                Digits.of(divisorDigits),
                Digits.of(quotientDigits),
                new Numbers.Whole(),
                List.of());
    }

    /// Exact quotients of whole numbers of so many digits in all: each split that fits is equally
    /// likely.
    public static QuotientWish inAll(int digits, Digits divisor, Digits quotient) {
        return new QuotientWish(digits, divisor, quotient, new Numbers.Whole(), List.of());
    }

    public QuotientWish with(Numbers changed) {
        return new QuotientWish(digits, divisor, quotient, changed, customs);
    }

    public QuotientWish keeping(List<Custom> changed) {
        return new QuotientWish(digits, divisor, quotient, numbers, changed);
    }

    /// This wish with the customs that papers keep, as far as its numbers can.
    public QuotientWish withUsualCustoms() {
        return keeping(Custom.usualFor(this));
    }
}
