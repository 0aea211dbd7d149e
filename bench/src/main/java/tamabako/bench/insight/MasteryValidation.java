package tamabako.bench.insight;

import java.io.PrintStream;
import java.util.List;
import java.util.SplittableRandom;
import tamabako.insight.mastery.MasteryPopulation;
import tamabako.insight.mastery.Spread;

/// Writes the tables of docs/validation.md on mastery.
public final class MasteryValidation {

    private static final long SEED = 20_261_130;

    /// Pupils of whom right and wrong, and the true slips, tell as much as of those that an earlier
    /// simulation was made with.
    private static final Spread DIFFERENT = new Spread(0.35, 0.15, 0.9, 0.5);

    /// Pupils who differ more in their hand altogether and less from move to move.
    private static final Spread ALIKE = new Spread(0.3, 0.4, 0.6, 0.5);

    private final PrintStream out;

    private MasteryValidation(PrintStream out) {
        this.out = out;
    }

    /// Runs the trials named, or all.
    public static void main(String[] names) {
        MasteryValidation validation = new MasteryValidation(System.out);
        List<String> asked = List.of(names);
        if (asked.isEmpty() || asked.contains("skills")) {
            validation.skills();
        }
        if (asked.isEmpty() || asked.contains("forgetting")) {
            validation.forgetting();
        }
        validation.out.println(MasteryTrial.head());
        if (asked.isEmpty() || asked.contains("main")) {
            for (int problems : new int[] {30, 100, 300}) {
                validation.trial(new ColumnPlan(10, 5), DIFFERENT, 0, problems, 300);
            }
        }
        if (asked.isEmpty() || asked.contains("long")) {
            validation.trial(new ColumnPlan(10, 5), DIFFERENT, 0, 1_000, 100);
        }
        if (asked.isEmpty() || asked.contains("other")) {
            validation.trial(new ColumnPlan(10, 5), ALIKE, 0, 300, 300);
            validation.trial(new ColumnPlan(10, 5), DIFFERENT, 0.5, 300, 300);
            validation.trial(new ColumnPlan(10, 3), DIFFERENT, 0, 300, 300);
        }
    }

    private void skills() {
        out.println("| problems | what | rank correlation | hold | said, right where said |");
        for (int problems : new int[] {100, 300}) {
            new SkillTrial(DIFFERENT, 200, problems, new SplittableRandom(SEED))
                    .lines()
                    .forEach(out::println);
        }
    }

    private void forgetting() {
        out.println("| pupils | daily | rank correlation | hold | loss |");
        for (ForgettingTrial.Change change : ForgettingTrial.Change.values()) {
            for (int last : ForgettingTrial.lastDays()) {
                ForgettingTrial trial =
                        new ForgettingTrial(
                                change, last, DIFFERENT, 200, new SplittableRandom(SEED));
                for (double daily : new double[] {1, 0.995, 0.985, 0.97, 0.94}) {
                    out.println(trial.line(daily));
                }
            }
        }
    }

    private void trial(
            ColumnPlan plan, Spread spread, double kindsOfTheHand, int problems, int pupils) {
        MasteryTrial trial =
                new MasteryTrial(
                        plan, spread, kindsOfTheHand, pupils, problems, new SplittableRandom(SEED));
        MasteryPopulation learned = trial.learned();
        out.println(trial.ours("ours, pupils in general learned", learned));
        out.println(trial.ours("ours, as shipped", MasteryPopulation.shipped()));
        trial.baselines().forEach(out::println);
        out.println("learned: " + learned.spread());
    }
}
