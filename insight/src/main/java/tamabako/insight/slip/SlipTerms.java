package tamabako.insight.slip;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/// The terms of a wrong answer's chance: weights times the factors of the strand of one slip, or of
/// the strands of two or three.
final class SlipTerms {

    static final SlipTerms NONE = new SlipTerms(new int[0][0], new double[0]);

    private final int[][] strands;
    private final double[] weights;

    private SlipTerms(int[][] strands, double[] weights) {
        this.strands = strands;
        this.weights = weights;
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
        double term = weights[i];
        for (int strand : strands[i]) {
            term *= factors[strand];
        }
        return term;
    }

    void addSlips(double[] factors, double times, double[] slips) {
        double all = sum(factors);
        for (int i = 0; i < weights.length; i++) {
            double share = times * term(i, factors) / all;
            for (int strand : strands[i]) {
                slips[strand] += share;
            }
        }
    }

    /// Adds to `slips` those of several slips at once only, as parts of the whole sum.
    void addTogether(double[] factors, double all, double[] slips) {
        for (int i = 0; i < weights.length; i++) {
            if (strands[i].length > 1) {
                for (int strand : strands[i]) {
                    slips[strand] += term(i, factors) / all;
                }
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
            for (int one : strands[i]) {
                for (int other : strands[i]) {
                    information[one][other] -= share;
                }
            }
        }
        for (int one = 0; one < mean.length; one++) {
            for (int other = 0; other < mean.length && mean[one] > 0; other++) {
                information[one][other] += times * mean[one] * mean[other];
            }
        }
    }

    /// Adds terms up.
    static final class Adding {

        private static final int COUNT = Strand.COUNT;

        private final double[] singles = new double[COUNT];
        private final double[][] pairs = new double[COUNT][COUNT];
        private final Map<Integer, Double> triples = new LinkedHashMap<>();

        void single(int strand, double weight) {
            singles[strand] += weight;
        }

        void pair(int one, int other, double weight) {
            pairs[Math.min(one, other)][Math.max(one, other)] += weight;
        }

        void triple(int one, int two, int three, double weight) {
            int[] sorted = {one, two, three};
            Arrays.sort(sorted);
            triples.merge((sorted[0] * COUNT + sorted[1]) * COUNT + sorted[2], weight, Double::sum);
        }

        SlipTerms terms() {
            int most = COUNT + COUNT * COUNT + triples.size();
            int[][] strands = new int[most][];
            double[] weights = new double[most];
            int size = 0;
            for (int one = 0; one < COUNT; one++) {
                if (singles[one] > 0) {
                    strands[size] = new int[] {one};
                    weights[size++] = singles[one];
                }
                for (int other = one; other < COUNT; other++) {
                    if (pairs[one][other] > 0) {
                        strands[size] = new int[] {one, other};
                        weights[size++] = pairs[one][other];
                    }
                }
            }
            for (Map.Entry<Integer, Double> triple : triples.entrySet()) {
                int key = triple.getKey();
                strands[size] = new int[] {key / COUNT / COUNT, key / COUNT % COUNT, key % COUNT};
                weights[size++] = triple.getValue();
            }
            return new SlipTerms(Arrays.copyOf(strands, size), Arrays.copyOf(weights, size));
        }
    }
}
