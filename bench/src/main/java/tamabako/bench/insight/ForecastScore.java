package tamabako.bench.insight;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/// How good told chances were: who passed and who did not.
final class ForecastScore {

    private static final double SURE = 1e-6;

    private record Told(double chance, boolean passed) {}

    private final List<Told> told = new ArrayList<>();

    void note(double chance, boolean passed) {
        told.add(new Told(chance, passed));
    }

    /// The mean square of what the chances were off.
    double brier() {
        return told.stream()
                .mapToDouble(one -> Math.pow(one.chance() - (one.passed() ? 1 : 0), 2))
                .average()
                .orElse(0);
    }

    /// The expected calibration error over ten bins of equal size.
    double calibrationError() {
        Calibration calibration = new Calibration();
        told.forEach(one -> calibration.note(one.chance(), one.passed()));
        return calibration.error();
    }

    /// The chance that one who passed had been told more than one who did not.
    double area() {
        List<Told> sorted = new ArrayList<>(told);
        sorted.sort(Comparator.comparingDouble(Told::chance));
        double ranks = 0;
        long passed = 0;
        int i = 0;
        while (i < sorted.size()) {
            int end = i;
            while (end < sorted.size() && sorted.get(end).chance() == sorted.get(i).chance()) {
                end++;
            }
            double rank = (i + end + 1) / 2.0;
            for (; i < end; i++) {
                if (sorted.get(i).passed()) {
                    ranks += rank;
                    passed++;
                }
            }
        }
        double others = sorted.size() - passed;
        return (ranks - passed * (passed + 1) / 2.0) / (passed * others);
    }

    /// The slope of passing on the logarithm of the told odds: 1 where they are neither too bold
    /// nor too timid.
    double slope() {
        double shift = 0;
        double slope = 1;
        for (int round = 0; round < 30; round++) {
            double[] sums = new double[5];
            for (Told one : told) {
                double inside = Math.clamp(one.chance(), SURE, 1 - SURE);
                double odds = Math.log(inside / (1 - inside));
                double chance = 1 / (1 + Math.exp(-shift - slope * odds));
                double off = (one.passed() ? 1 : 0) - chance;
                double weight = chance * (1 - chance);
                sums[0] += off;
                sums[1] += off * odds;
                sums[2] += weight;
                sums[3] += weight * odds;
                sums[4] += weight * odds * odds;
            }
            double all = sums[2] * sums[4] - sums[3] * sums[3];
            if (!(all > 0)) {
                return Double.NaN;
            }
            shift += (sums[4] * sums[0] - sums[3] * sums[1]) / all;
            slope += (sums[2] * sums[1] - sums[3] * sums[0]) / all;
        }
        return slope;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "%.3f %.4f %.4f %.2f", area(), brier(), calibrationError(), slope());
    }
}
