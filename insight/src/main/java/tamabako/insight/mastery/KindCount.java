package tamabako.insight.mastery;

import java.util.OptionalInt;
import org.hipparchus.distribution.continuous.BetaDistribution;

/// Right and wrong answers of one kind of problem, and how much they still count.
record KindCount(int right, int wrong, double rightLeft, double wrongLeft) {

    /// Fewer answers than this say nothing.
    private static final double ENOUGH = 10;

    /// Before any answer all shares are possible, the high and low ones a little more (Jeffreys).
    private static final double BEFORE = 0.5;

    private static final double SURELY = 1.2815515655446004;
    private static final int MOST = 1_000;

    static KindCount of(int right, int wrong, double weight) {
        return new KindCount(right, wrong, weight * right, weight * wrong);
    }

    KindCount plus(KindCount other) {
        return new KindCount(
                right + other.right,
                wrong + other.wrong,
                rightLeft + other.rightLeft,
                wrongLeft + other.wrongLeft);
    }

    KindMastery told(String kind) {
        BetaDistribution share = new BetaDistribution(rightLeft + BEFORE, wrongLeft + BEFORE);
        double good = 1 - share.cumulativeProbability(Demand.RIGHT);
        double left = rightLeft + wrongLeft;
        Statement statement = Statement.of(good, left >= ENOUGH);
        return new KindMastery(
                kind,
                right + wrong,
                right,
                share.inverseCumulativeProbability(0.5),
                share.inverseCumulativeProbability(0.05),
                share.inverseCumulativeProbability(0.95),
                good,
                statement,
                statement == Statement.NEEDS_EVIDENCE ? needed(left) : OptionalInt.empty());
    }

    private OptionalInt needed(double left) {
        double share = (rightLeft + BEFORE) / (left + 2 * BEFORE);
        double off = (share - Demand.RIGHT) / SURELY;
        double problems = Math.max(ENOUGH, share * (1 - share) / (off * off)) - left;
        return problems > MOST
                ? OptionalInt.empty()
                : OptionalInt.of(Math.max(5, (int) Math.ceil(problems / 5) * 5));
    }
}
