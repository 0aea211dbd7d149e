package tamabako.insight.slip;

/// The terms of a wrong answer's chance: weights times the factors of one strand or of two.
///
/// @param first the strand of the one slip
/// @param second the strand of the other; -1 where there is none
final class SlipTerms {

    static final SlipTerms NONE = new SlipTerms(new int[0], new int[0], new double[0]);

    private static final int NO_OTHER = -1;

    private final int[] first;
    private final int[] second;
    private final double[] weights;

    SlipTerms(int[] first, int[] second, double[] weights) {
        this.first = first;
        this.second = second;
        this.weights = weights;
    }

    /// Of a matrix of weights by strand and strand, the upper triangle; its last column is for
    /// single slips.
    static SlipTerms of(double[][] matrix) {
        int size = 0;
        for (double[] row : matrix) {
            for (double weight : row) {
                size += weight > 0 ? 1 : 0;
            }
        }
        int[] first = new int[size];
        int[] second = new int[size];
        double[] weights = new double[size];
        int filled = 0;
        for (int one = 0; one < matrix.length; one++) {
            for (int other = 0; other <= matrix.length; other++) {
                if (matrix[one][other] > 0) {
                    first[filled] = one;
                    second[filled] = other == matrix.length ? NO_OTHER : other;
                    weights[filled++] = matrix[one][other];
                }
            }
        }
        return new SlipTerms(first, second, weights);
    }

    boolean isEmpty() {
        return weights.length == 0;
    }

    /// The sum of all terms.
    double sum(double[] factors) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += term(i, factors);
        }
        return sum;
    }

    private double term(int i, double[] factors) {
        double one = weights[i] * factors[first[i]];
        return second[i] == NO_OTHER ? one : one * factors[second[i]];
    }

    void addSlips(double[] factors, double times, double[] slips) {
        double all = sum(factors);
        for (int i = 0; i < weights.length; i++) {
            double share = times * term(i, factors) / all;
            slips[first[i]] += share;
            if (second[i] != NO_OTHER) {
                slips[second[i]] += share;
            }
        }
    }

    /// Adds to `slips` those of two slips at once only, as parts of the whole sum.
    void addPaired(double[] factors, double all, double[] slips) {
        for (int i = 0; i < weights.length; i++) {
            if (second[i] != NO_OTHER) {
                double share = term(i, factors) / all;
                slips[first[i]] += share;
                slips[second[i]] += share;
            }
        }
    }

    void takeDoubt(double[] factors, double times, double[][] information) {
        if (weights.length < 2) {
            return;
        }
        double[] mean = new double[Strand.COUNT];
        addSlips(factors, 1, mean);
        double all = sum(factors);
        for (int i = 0; i < weights.length; i++) {
            double share = times * term(i, factors) / all;
            information[first[i]][first[i]] -= share;
            if (second[i] != NO_OTHER) {
                information[second[i]][second[i]] -= share;
                information[first[i]][second[i]] -= share;
                information[second[i]][first[i]] -= share;
            }
        }
        for (int one = 0; one < mean.length; one++) {
            for (int other = 0; other < mean.length && mean[one] > 0; other++) {
                information[one][other] += times * mean[one] * mean[other];
            }
        }
    }
}
