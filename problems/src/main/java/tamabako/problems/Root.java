package tamabako.problems;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Optional;
import tamabako.frame.Rounding;
import tamabako.frame.Setup;
import tamabako.frame.Unworkable;
import tamabako.frame.Working;
import tamabako.frame.root.RootWork;

/// A square root (kaihei) or cube root (kairyū), to the places that the terms ask for, 0 if they
/// ask for none. Rounded down, it has a remainder.
///
/// @param degree 2 or 3
public record Root(String id, int degree, BigDecimal of, Terms terms) implements Problem {

    public Root {
        if (degree != 2 && degree != 3) {
            throw new Unworkable(new Unworkable.Reason.NoSuchRoot(degree));
        }
        if (of.signum() < 0) {
            throw new Unworkable(new Unworkable.Reason.NegativeRoot(of.toPlainString()));
        }
    }

    @Override
    public Answer answer() {
        if (rounding() == Rounding.HALF_UP) {
            return Answer.of(down(places() + 1).setScale(places(), RoundingMode.HALF_UP));
        }
        BigDecimal root = down(places());
        return new Answer(root, Optional.of(of.subtract(root.pow(degree))));
    }

    @Override
    public Working work(Setup setup) {
        return RootWork.work(degree, of, places(), rounding(), setup);
    }

    @Override
    public Root withId(String changed) {
        return new Root(changed, degree, of, terms);
    }

    private int places() {
        return terms.places().orElse(0);
    }

    /// The largest number of so many places whose power is not above the radicand.
    private BigDecimal down(int places) {
        BigInteger scaled =
                of.scaleByPowerOfTen(degree * places).setScale(0, RoundingMode.DOWN).toBigInteger();
        return new BigDecimal(degree == 2 ? scaled.sqrt() : cubeRoot(scaled), places);
    }

    private static BigInteger cubeRoot(BigInteger number) {
        BigInteger root = BigInteger.ZERO;
        for (int bit = number.bitLength() / 3; bit >= 0; bit--) {
            BigInteger longer = root.setBit(bit);
            if (longer.pow(3).compareTo(number) <= 0) {
                root = longer;
            }
        }
        return root;
    }
}
