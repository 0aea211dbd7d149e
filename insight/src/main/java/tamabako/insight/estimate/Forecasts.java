package tamabako.insight.estimate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.stat.ranking.NaturalRanking;

/// How good forecasts were, once it is known what came.
public final class Forecasts {

    private Forecasts() {}

    /// How often a case that came true had the higher chance of two, one of each sort; equal
    /// chances count one half. One half is guessing. NaN where all or none came true.
    public static double rankedRight(List<Forecast> forecasts) {
        double[] ranks =
                new NaturalRanking()
                        .rank(forecasts.stream().mapToDouble(Forecast::chance).toArray());
        double came = 0;
        double sum = 0;
        for (int i = 0; i < ranks.length; i++) {
            if (forecasts.get(i).so()) {
                came++;
                sum += ranks[i];
            }
        }
        return (sum - came * (came + 1) / 2) / (came * (ranks.length - came));
    }

    /// Brier's score: the mean square of what was forecast less what came. Zero is best.
    public static double brier(List<Forecast> forecasts) {
        return mean(forecasts, f -> (f.chance() - f.came()) * (f.chance() - f.came()));
    }

    /// The mean of the logarithm of the chance of what came, negated, in nats. Zero is best;
    /// infinite where something came that was called impossible.
    public static double logLoss(List<Forecast> forecasts) {
        return mean(forecasts, f -> -Math.log(f.so() ? f.chance() : 1 - f.chance()));
    }

    /// Expected calibration error over bins of equal width from 0 to 1.
    public static double errorByWidth(List<Forecast> forecasts, int bins) {
        List<List<Forecast>> parts = new ArrayList<>();
        for (int bin = 0; bin < bins; bin++) {
            parts.add(new ArrayList<>());
        }
        for (Forecast forecast : forecasts) {
            int bin =
                    (int) Math.min(bins - 1, Math.max(0, Math.ceil(forecast.chance() * bins) - 1));
            parts.get(bin).add(forecast);
        }
        return error(parts, forecasts.size());
    }

    /// Expected calibration error over bins of as many forecasts each, sorted by chance.
    public static double errorByNumber(List<Forecast> forecasts, int bins) {
        return error(parts(forecasts, bins), forecasts.size());
    }

    /// How surprising the numbers that came true in each of some groups are.
    ///
    /// @param chiSquare Hosmer and Lemeshow's statistic
    /// @param chance of one as great if all forecasts are right
    public record Fit(double chiSquare, double chance) {}

    /// Hosmer and Lemeshow's test over groups of as many forecasts each.
    ///
    /// Source: Hosmer and Lemeshow, Communications in Statistics A 9 (1980).
    public static Fit fit(List<Forecast> forecasts, int groups) {
        double chiSquare = 0;
        for (List<Forecast> part : parts(forecasts, groups)) {
            double expected = part.stream().mapToDouble(Forecast::chance).sum();
            double came = part.stream().mapToDouble(Forecast::came).sum();
            double away = (came - expected) * (came - expected);
            chiSquare += away / expected + away / (part.size() - expected);
        }
        double chance = 1 - new ChiSquaredDistribution(groups - 2).cumulativeProbability(chiSquare);
        return new Fit(chiSquare, chance);
    }

    /// How forecasts would have to be bent to be right.
    ///
    /// @param slope of what came over the forecast logits; one is right, below one is too sure
    /// @param shift in logits where the slope is as found
    public record Bend(Estimate slope, Estimate shift) {}

    /// The logistic regression of what came on the forecast logits, or nothing where it has no top.
    /// Forecasts of 0 and 1 have no logit and are not allowed.
    ///
    /// Source: Cox, Biometrika 45 (1958).
    public static Optional<Bend> bend(List<Forecast> forecasts) {
        double[][] rows = new double[forecasts.size()][];
        double[] came = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            double chance = forecasts.get(i).chance();
            if (chance == 0 || chance == 1) {
                throw new IllegalArgumentException("A forecast of " + chance + " has no logit.");
            }
            rows[i] = new double[] {1, Math.log(chance / (1 - chance))};
            came[i] = forecasts.get(i).came();
        }
        return LogisticRegression.fit(Trials.of(rows, came))
                .map(fit -> new Bend(fit.coefficients().getLast(), fit.coefficients().getFirst()));
    }

    private static List<List<Forecast>> parts(List<Forecast> forecasts, int parts) {
        List<Forecast> sorted =
                forecasts.stream().sorted(Comparator.comparingDouble(Forecast::chance)).toList();
        List<List<Forecast>> cut = new ArrayList<>();
        for (int part = 0; part < parts; part++) {
            cut.add(
                    sorted.subList(
                            part * sorted.size() / parts, (part + 1) * sorted.size() / parts));
        }
        return cut;
    }

    private static double error(List<List<Forecast>> parts, int all) {
        double error = 0;
        for (List<Forecast> part : parts) {
            double expected = part.stream().mapToDouble(Forecast::chance).sum();
            double came = part.stream().mapToDouble(Forecast::came).sum();
            error += Math.abs(expected - came);
        }
        return error / all;
    }

    private static double mean(List<Forecast> forecasts, ToDoubleFunction<Forecast> loss) {
        return forecasts.stream().mapToDouble(loss).average().orElse(Double.NaN);
    }
}
