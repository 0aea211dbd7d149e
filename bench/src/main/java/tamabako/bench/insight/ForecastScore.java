package tamabako.bench.insight;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tamabako.insight.estimate.Forecast;
import tamabako.insight.estimate.Forecasts;

/// How good told chances were: who passed and who did not.
final class ForecastScore {

    /// No chance is bent that is nearer to 0 or 1 than this.
    private static final double SURE = 1e-6;

    private static final int BINS = 10;

    private final List<Forecast> told = new ArrayList<>();

    void note(double chance, boolean passed) {
        told.add(new Forecast(chance, passed));
    }

    double brier() {
        return Forecasts.brier(told);
    }

    /// The expected calibration error over ten bins of equal size.
    double calibrationError() {
        return Forecasts.errorByNumber(told, BINS);
    }

    /// The chance that one who passed had been told more than one who did not.
    double area() {
        return Forecasts.rankedRight(told);
    }

    /// The slope of passing on the logarithm of the told odds: 1 where they are neither too bold
    /// nor too timid, not a number where all were told the same.
    double slope() {
        List<Forecast> unsure =
                told.stream()
                        .map(one ->
                                new Forecast(Math.clamp(one.chance(), SURE, 1 - SURE), one.so()))
                        .toList();
        return Forecasts.bend(unsure).map(bend -> bend.slope().value()).orElse(Double.NaN);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "%.3f %.4f %.4f %.2f", area(), brier(), calibrationError(), slope());
    }
}
