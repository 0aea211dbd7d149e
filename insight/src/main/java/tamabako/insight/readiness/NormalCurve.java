package tamabako.insight.readiness;

/// The distribution function of the normal curve.
///
/// Source: G. West, "Better approximations to cumulative normal functions" (2005), after J. F. Hart
/// and others, "Computer Approximations" (1968), algorithm 5666; absolute error below 1e-15.
final class NormalCurve {

    private static final double FAR = 7.071_067_811_865_47;
    private static final double OUT_OF_SIGHT = 37;
    private static final double ROOT_OF_TURN = 2.506_628_274_631_000_2;

    private static final double[] ABOVE = {
        3.526_249_659_989_11e-2,
        0.700_383_064_443_688,
        6.373_962_203_531_65,
        33.912_866_078_383,
        112.079_291_497_871,
        221.213_596_169_931,
        220.206_867_912_376
    };

    private static final double[] BELOW = {
        8.838_834_764_831_84e-2,
        1.755_667_163_182_64,
        16.064_177_579_207,
        86.780_732_202_946_1,
        296.564_248_779_674,
        637.333_633_378_831,
        793.826_512_519_948,
        440.413_735_824_752
    };

    private NormalCurve() {}

    /// The chance that a standard normal value is at most `value`.
    static double below(double value) {
        double size = Math.abs(value);
        double tail = size > OUT_OF_SIGHT ? 0 : tail(size);
        return value > 0 ? 1 - tail : tail;
    }

    private static double tail(double size) {
        double height = Math.exp(-size * size / 2);
        if (size < FAR) {
            return height * polynomial(ABOVE, size) / polynomial(BELOW, size);
        }
        double fraction = size + 0.65;
        for (int i = 4; i >= 1; i--) {
            fraction = size + i / fraction;
        }
        return height / fraction / ROOT_OF_TURN;
    }

    private static double polynomial(double[] coefficients, double at) {
        double sum = 0;
        for (double coefficient : coefficients) {
            sum = sum * at + coefficient;
        }
        return sum;
    }
}
