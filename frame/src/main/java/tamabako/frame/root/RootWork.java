package tamabako.frame.root;

import java.math.BigDecimal;
import tamabako.frame.Cause.Operand;
import tamabako.frame.Given;
import tamabako.frame.Precision;
import tamabako.frame.Rounding;
import tamabako.frame.Setup;
import tamabako.frame.Unworkable;
import tamabako.frame.Working;

/// Works a root on a frame: a square root by the way that the setup's habits name, a cube root by
/// the triple root. The unit rod is that of the root.
public final class RootWork {

    private RootWork() {}

    /// Works the root of degree 2 or 3 to `places`, 0 to 12. Rounded half up, one place more is
    /// worked; rounded down, the outcome has a remainder.
    ///
    /// @throws Unworkable if the degree is another, `of` is below zero, `places` is out of range,
    ///   or more rods are needed than the frame has
    public static Working work(
            int degree, BigDecimal of, int places, Rounding rounding, Setup setup) {
        if (degree != 2 && degree != 3) {
            throw new Unworkable(new Unworkable.Reason.NoSuchRoot(degree));
        }
        Precision precision = new Precision(places, rounding);
        RootSum sum = new RootSum(degree, new Given(Operand.RADICAND, of), precision);
        if (degree == 3) {
            return CubeRoot.work(sum, setup);
        }
        return switch (setup.habits().squareRootWay()) {
            case HALF_NINE_NINE -> HalfRoot.work(sum, setup);
            case DOUBLE_ROOT -> DoubleRoot.work(sum, setup);
        };
    }
}
