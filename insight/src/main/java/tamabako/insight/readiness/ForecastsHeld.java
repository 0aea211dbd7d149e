package tamabako.insight.readiness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/// How well forecasts of the past held.
///
/// @param outcomes what was told, uncorrected, and what came of it
public record ForecastsHeld(List<Recalibration.Outcome> outcomes) {

    /// So many exams are needed before anything is told.
    public static final int NEEDED = 10;

    private static final int MOST_GROUPS = 5;
    private static final double NINE_IN_TEN = 1.6448536269514722;

    public ForecastsHeld {
        outcomes = List.copyOf(outcomes);
    }

    /// What they say of the forecasts.
    public enum Verdict {
        /// As many passed as were foretold, give or take what chance does.
        AS_TOLD,
        /// Fewer passed.
        TOLD_TOO_HIGH,
        /// More passed.
        TOLD_TOO_LOW
    }

    /// Exams of which nearly the same chance was told.
    ///
    /// @param told the mean chance
    public record Group(double told, int exams, int passed) {}

    /// How many exams there are.
    public int exams() {
        return outcomes.size();
    }

    /// Whether there are enough to tell how well forecasts held.
    public boolean isTold() {
        return outcomes.size() >= NEEDED;
    }

    /// How many should have passed by what was told.
    public double foretold() {
        return outcomes.stream().mapToDouble(Recalibration.Outcome::told).sum();
    }

    /// How many passed.
    public int passed() {
        return (int) outcomes.stream().filter(Recalibration.Outcome::passed).count();
    }

    /// Whether the numbers of those foretold and of those who passed go together: they do if they
    /// are no further apart than they would be in nine of ten such rows of exams, were every chance
    /// right.
    public Verdict verdict() {
        double spread =
                Math.sqrt(
                        outcomes.stream().mapToDouble(one -> one.told() * (1 - one.told())).sum());
        double off = passed() - foretold();
        // Half an exam, for exams are whole.
        if (Math.abs(off) <= NINE_IN_TEN * spread + 0.5) {
            return Verdict.AS_TOLD;
        }
        return off < 0 ? Verdict.TOLD_TOO_HIGH : Verdict.TOLD_TOO_LOW;
    }

    /// The exams in groups of [#NEEDED] or more, from the lowest chance told to the highest; none
    /// where there are fewer.
    public List<Group> groups() {
        int count = Math.min(MOST_GROUPS, outcomes.size() / NEEDED);
        List<Recalibration.Outcome> sorted =
                outcomes.stream()
                        .sorted(Comparator.comparingDouble(Recalibration.Outcome::told))
                        .toList();
        List<Group> groups = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            List<Recalibration.Outcome> here =
                    sorted.subList(i * sorted.size() / count, (i + 1) * sorted.size() / count);
            groups.add(
                    new Group(
                            here.stream()
                                    .mapToDouble(Recalibration.Outcome::told)
                                    .average()
                                    .orElseThrow(),
                            here.size(),
                            (int) here.stream().filter(Recalibration.Outcome::passed).count()));
        }
        return groups;
    }

    /// What is learned from them; nothing below [Recalibration#NEEDED] exams.
    public Recalibration correction() {
        return Recalibration.learnedFrom(outcomes);
    }
}
