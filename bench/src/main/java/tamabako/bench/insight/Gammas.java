package tamabako.bench.insight;

import java.util.SplittableRandom;

/// Draws from gamma distributions of scale 1 (G. Marsaglia and W. W. Tsang, A simple method for
/// generating gamma variables, 2000).
final class Gammas {

    private Gammas() {}

    /// @param shape above 0
    static double draw(double shape, SplittableRandom chance) {
        if (shape < 1) {
            return draw(shape + 1, chance) * Math.pow(chance.nextDouble(), 1 / shape);
        }
        double d = shape - 1.0 / 3;
        double c = 1 / Math.sqrt(9 * d);
        while (true) {
            double normal = chance.nextGaussian();
            double v = Math.pow(1 + c * normal, 3);
            if (v > 0
                    && Math.log(1 - chance.nextDouble())
                            < normal * normal / 2 + d - d * v + d * Math.log(v)) {
                return d * v;
            }
        }
    }
}
