package tamabako.insight.readiness;

import java.util.List;

/// How chances that were told are to be corrected, after what came of them: the logarithm of the
/// odds becomes `shift + slope` times as it was.
///
/// @param slope above 0; 1 for none
public record Recalibration(double shift, double slope) {

    /// No correction.
    public static final Recalibration NONE = new Recalibration(0, 1);

    /// From so many exams on it is learned.
    public static final int NEEDED = 50;

    /// The slope is taken to be 1, give or take so much, before any exam.
    private static final double SLOPE_SPREAD = 0.2;

    private static final double SHIFT_SPREAD = 0.5;
    private static final double SURE = 1e-6;
    private static final int ROUNDS = 50;

    /// What came of one exam.
    ///
    /// @param told the chance that was told before, uncorrected
    public record Outcome(double told, boolean passed) {}

    /// The likeliest correction after `outcomes`; [#NONE] below [#NEEDED] of them. It is found by
    /// Newton's method.
    public static Recalibration learnedFrom(List<Outcome> outcomes) {
        if (outcomes.size() < NEEDED) {
            return NONE;
        }
        double shift = 0;
        double slope = 1;
        for (int round = 0; round < ROUNDS; round++) {
            double byShift = -shift / (SHIFT_SPREAD * SHIFT_SPREAD);
            double bySlope = (1 - slope) / (SLOPE_SPREAD * SLOPE_SPREAD);
            double ofShift = 1 / (SHIFT_SPREAD * SHIFT_SPREAD);
            double ofBoth = 0;
            double ofSlope = 1 / (SLOPE_SPREAD * SLOPE_SPREAD);
            for (Outcome outcome : outcomes) {
                double odds = logOdds(outcome.told());
                double chance = chance(shift + slope * odds);
                double off = (outcome.passed() ? 1 : 0) - chance;
                double weight = chance * (1 - chance);
                byShift += off;
                bySlope += off * odds;
                ofShift += weight;
                ofBoth += weight * odds;
                ofSlope += weight * odds * odds;
            }
            double all = ofShift * ofSlope - ofBoth * ofBoth;
            double shiftBy = (ofSlope * byShift - ofBoth * bySlope) / all;
            double slopeBy = (ofShift * bySlope - ofBoth * byShift) / all;
            shift += shiftBy;
            slope = Math.max(0.05, slope + slopeBy);
            if (Math.abs(shiftBy) + Math.abs(slopeBy) < 1e-10) {
                break;
            }
        }
        return new Recalibration(shift, slope);
    }

    /// A chance, corrected.
    public double of(double told) {
        return equals(NONE) ? told : chance(shift + slope * logOdds(told));
    }

    /// A chance with its band, corrected.
    public Chance of(Chance told) {
        return new Chance(of(told.likely()), of(told.low()), of(told.high()));
    }

    private static double logOdds(double chance) {
        double inside = Math.clamp(chance, SURE, 1 - SURE);
        return Math.log(inside / (1 - inside));
    }

    private static double chance(double logOdds) {
        return 1 / (1 + Math.exp(-logOdds));
    }
}
