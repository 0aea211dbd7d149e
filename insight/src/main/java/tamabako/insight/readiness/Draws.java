package tamabako.insight.readiness;

import java.util.List;
import java.util.stream.IntStream;

/// Pupils that one pupil may be, equally likely: for each field how often slips are made, and how
/// long work takes.
///
/// They are not drawn by chance but spread evenly, by the fractions of multiples of square roots of
/// primes, so that a few hundred tell as much as many thousand drawn, and always the same.
///
/// Source: R. D. Richtmyer, "The evaluation of definite integrals, and a quasi-Monte-Carlo method
/// based on the properties of algebraic numbers" (1951).
final class Draws {

    /// Where a standard normal value stands for all, and how much each place weighs.
    ///
    /// Source: Gauss and Hermite's rule of five and of three points.
    static final double[] TOGETHER = {
        -2.856_970_013_872_806,
        -1.355_626_179_974_266,
        0,
        1.355_626_179_974_266,
        2.856_970_013_872_806
    };

    static final double[] ALONE = {-1.732_050_807_568_877, 0, 1.732_050_807_568_877};

    private static final double[] TOGETHER_WEIGHTS = {
        0.011_257_411_327_720_7,
        0.222_075_922_005_613,
        0.533_333_333_333_333,
        0.222_075_922_005_613,
        0.011_257_411_327_720_7
    };

    private static final double ALONE_OUTSIDE = 1 / 6.0;

    private static final int[] PRIMES = {
        2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83, 89,
        97, 101, 103, 107, 109, 113
    };

    /// At most so many pupils are drawn.
    static final int MOST = 512;

    /// Where the unknown part of the pace of each pupil drawn stands.
    private static final double[] NORMAL =
            IntStream.range(0, MOST).mapToDouble(i -> inverse(even(i, 1))).toArray();

    private final int[][] places;
    private final int[][] alone;
    private final double[][] together;

    /// @param fields the fields that matter, as indexes of all
    Draws(Standing standing, List<Integer> fields, int count) {
        this.places = new int[count][fields.size()];
        this.alone = new int[count][fields.size()];
        this.together = new double[count][];
        double unknown = fields.stream().mapToDouble(standing.pace()::unknown).average().orElse(0);
        for (int i = 0; i < count; i++) {
            int shared = standing.slips().shared(even(i, 0));
            together[i] = together(unknown, NORMAL[i]);
            for (int j = 0; j < fields.size(); j++) {
                places[i][j] = standing.slips().place(shared, fields.get(j), even(i, 2 + 2 * j));
                double chance = even(i, 3 + 2 * j);
                alone[i][j] = chance < ALONE_OUTSIDE ? 0 : chance < 1 - ALONE_OUTSIDE ? 1 : 2;
            }
        }
    }

    private static double even(int i, int dimension) {
        double turns = (i + 0.5) * Math.sqrt(PRIMES[dimension]);
        return turns - Math.floor(turns);
    }

    /// How likely each place of [#TOGETHER] is for a pupil whose unknown part stands at the
    /// standard normal value `normal`; the rest is the day's.
    private static double[] together(double unknown, double normal) {
        double[] weights = TOGETHER_WEIGHTS.clone();
        double at = Math.sqrt(unknown) * normal;
        double rest = Math.max(0.05, 1 - unknown);
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            double off = TOGETHER[i] - at;
            double here = TOGETHER[i];
            weights[i] *= Math.exp(here * here / 2 - off * off / (2 * rest));
            sum += weights[i];
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
        return weights;
    }

    /// The normal value below which one is with the chance `chance`, found by halving.
    private static double inverse(double chance) {
        double low = -6;
        double high = 6;
        for (int i = 0; i < 30; i++) {
            double middle = (low + high) / 2;
            if (NormalCurve.below(middle) < chance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    int count() {
        return places.length;
    }

    /// How often pupil `i` slips in field `j` of those that matter, as a place of the grid.
    int place(int i, int j) {
        return places[i][j];
    }

    /// Where the pace of pupil `i` in field `j` by itself stands, an index of [#ALONE].
    int alone(int i, int j) {
        return alone[i][j];
    }

    /// How likely each place of [#TOGETHER] is for pupil `i`.
    double[] together(int i) {
        return together[i];
    }

    int lowest() {
        int lowest = Integer.MAX_VALUE;
        for (int[] one : places) {
            for (int place : one) {
                lowest = Math.min(lowest, place);
            }
        }
        return lowest;
    }

    int highest() {
        int highest = Integer.MIN_VALUE;
        for (int[] one : places) {
            for (int place : one) {
                highest = Math.max(highest, place);
            }
        }
        return highest;
    }
}
