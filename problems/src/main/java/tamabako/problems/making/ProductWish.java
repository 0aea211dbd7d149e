package tamabako.problems.making;

import java.util.List;

/// Products (kakezan). No factor is 1 or ends in 0; common practice, no published source.
///
/// `ProductWish.inAll(11, new Digits(5, 7), new Digits(4, 6)).with(Numbers.yen())
/// .withUsualCustoms()` are the amounts of a first-grade paper (JCCI, shuzan.jp/kentei/shuzan).
///
/// @param digits digits of both factors together
/// @param multiplicand digits of the multiplicand (jitsu), within 1 to 15
/// @param multiplier digits of the multiplier (hō), within 1 to 15
/// @param numbers what sort of numbers they are
/// @param customs what the set keeps to besides
public record ProductWish(
        int digits, Digits multiplicand, Digits multiplier, Numbers numbers, List<Custom> customs)
        implements Wish {

    public ProductWish {
        customs = List.copyOf(customs);
    }

    /// Exact products of whole numbers of so many digits.
    public ProductWish(int multiplicandDigits, int multiplierDigits) {
        this(
                multiplicandDigits + multiplierDigits,
                Digits.of(multiplicandDigits),
                Digits.of(multiplierDigits),
                new Numbers.Whole(),
                List.of());
    }

    /// Exact products of whole numbers of so many digits in all: each split that fits is equally
    /// likely.
    public static ProductWish inAll(int digits, Digits multiplicand, Digits multiplier) {
        return new ProductWish(digits, multiplicand, multiplier, new Numbers.Whole(), List.of());
    }

    public ProductWish with(Numbers changed) {
        return new ProductWish(digits, multiplicand, multiplier, changed, customs);
    }

    public ProductWish keeping(List<Custom> changed) {
        return new ProductWish(digits, multiplicand, multiplier, numbers, changed);
    }

    /// This wish with the customs that papers keep, as far as its numbers can.
    public ProductWish withUsualCustoms() {
        return keeping(Custom.usualFor(this));
    }
}
