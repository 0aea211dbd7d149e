package tamabako.bench.insight;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/// Spearman's correlation of ranks; equal numbers share their rank.
final class Ranks {

    private Ranks() {}

    static double correlation(double[] some, double[] others) {
        double[] one = ranks(some);
        double[] other = ranks(others);
        double middle = (one.length + 1) / 2.0;
        double both = 0;
        double ofOne = 0;
        double ofOther = 0;
        for (int i = 0; i < one.length; i++) {
            both += (one[i] - middle) * (other[i] - middle);
            ofOne += (one[i] - middle) * (one[i] - middle);
            ofOther += (other[i] - middle) * (other[i] - middle);
        }
        return ofOne == 0 || ofOther == 0 ? 0 : both / Math.sqrt(ofOne * ofOther);
    }

    private static double[] ranks(double[] numbers) {
        Integer[] order = IntStream.range(0, numbers.length).boxed().toArray(Integer[]::new);
        Arrays.sort(order, Comparator.comparingDouble(i -> numbers[i]));
        double[] ranks = new double[numbers.length];
        for (int from = 0; from < order.length; ) {
            int to = from;
            while (to < order.length && numbers[order[to]] == numbers[order[from]]) {
                to++;
            }
            for (int i = from; i < to; i++) {
                ranks[order[i]] = (from + 1 + to) / 2.0;
            }
            from = to;
        }
        return ranks;
    }
}
