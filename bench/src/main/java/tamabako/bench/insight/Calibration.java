package tamabako.bench.insight;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/// Whether what is said with certainty p is so in p of the cases.
final class Calibration {

    private static final int BINS = 10;

    private record Said(double certainty, boolean so) {}

    private final List<Said> said = new ArrayList<>();

    void note(double certainty, boolean so) {
        said.add(new Said(certainty, so));
    }

    /// The expected calibration error over ten bins of equal size.
    double error() {
        said.sort(Comparator.comparingDouble(Said::certainty));
        double error = 0;
        for (int bin = 0; bin < BINS; bin++) {
            List<Said> in = said.subList(bin * said.size() / BINS, (bin + 1) * said.size() / BINS);
            double certainty = in.stream().mapToDouble(Said::certainty).sum();
            double so = in.stream().filter(Said::so).count();
            error += Math.abs(certainty - so);
        }
        return error / said.size();
    }
}
