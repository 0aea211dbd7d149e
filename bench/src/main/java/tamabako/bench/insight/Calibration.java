package tamabako.bench.insight;

import java.util.ArrayList;
import java.util.List;
import tamabako.insight.estimate.Forecast;
import tamabako.insight.estimate.Forecasts;

/// Whether what is said with certainty p is so in p of the cases.
final class Calibration {

    private static final int BINS = 10;

    private final List<Forecast> said = new ArrayList<>();

    void note(double certainty, boolean so) {
        said.add(new Forecast(Math.min(1, certainty), so));
    }

    /// The expected calibration error over ten bins of equal size.
    double error() {
        return Forecasts.errorByNumber(said, BINS);
    }
}
