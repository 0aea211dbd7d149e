package tamabako.bench.insight;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.Function;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Rates;

/// Writes the tables of docs/validation.md on slips.
public final class SlipValidation {

    private static final long SEED = 20_261_130;

    private static final List<ColumnPlan> PLANS =
            List.of(
                    new ColumnPlan(10, 10),
                    new ColumnPlan(10, 5),
                    new ColumnPlan(10, 3),
                    new ColumnPlan(5, 2));

    private final PrintStream out;

    private SlipValidation(PrintStream out) {
        this.out = out;
    }

    /// Runs the trials named, or all.
    public static void main(String[] names) {
        SlipValidation validation = new SlipValidation(System.out);
        List<String> asked = List.of(names);
        if (asked.isEmpty() || asked.contains("single")) {
            validation.single(6_000);
        }
        if (asked.isEmpty() || asked.contains("free")) {
            validation.free(4_000);
        }
        if (asked.isEmpty() || asked.contains("main")) {
            validation.mainSlips(500);
        }
        if (asked.isEmpty() || asked.contains("rules")) {
            validation.rules(150);
        }
    }

    private void free(int wrong) {
        row(FreeSlips.head());
        for (ColumnPlan plan : PLANS) {
            row(new FreeSlips(plan).work(wrong, new SplittableRandom(SEED)).line());
        }
    }

    private void mainSlips(int pupils) {
        row(MainSlips.head());
        for (ColumnPlan plan : PLANS.subList(0, 3)) {
            for (double share : new double[] {0, 0.3, 0.5, 0.7}) {
                MainSlips slips =
                        new MainSlips(plan).work(pupils, share, new SplittableRandom(SEED));
                for (int n = 0; n < MainSlips.WRONG.length; n++) {
                    row(slips.line(Double.toString(share), n));
                }
            }
        }
    }

    private void rules(int pupils) {
        row(Rules.head());
        for (double followed : new double[] {0, 0.3, 0.6, 1}) {
            Rules rules =
                    new Rules(new ColumnPlan(10, 5), followed)
                            .work(pupils, new SplittableRandom(SEED));
            for (int n = 0; n < Rules.WRONG.length; n++) {
                row(rules.line(n));
            }
        }
    }

    private void single(int trials) {
        row("| problem | pupils | judged by | n | ours | hand rules | majority |");
        for (ColumnPlan plan : PLANS) {
            single(plan, "R", Priors::shipped, "R", Priors::shipped, trials);
            single(plan, "U", Priors::even, "U", Priors::even, trials);
            single(plan, "R", Priors::shipped, "U", Priors::even, trials);
        }
    }

    private void single(
            ColumnPlan plan,
            String pupils,
            Function<EventTable, Rates> truth,
            String judged,
            Function<EventTable, Rates> taken,
            int trials) {
        SingleSlips single = new SingleSlips(truth, taken);
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < trials; i++) {
            List<Long> rows = plan.draw(random);
            single.ask(
                    new SingleSlips.Task(
                            ColumnPlan.column(rows), fate -> ColumnPupil.writes(rows, fate)),
                    random);
        }
        row(
                "| %s | %s | %s | %d | %s | %.3f | %.3f |",
                plan,
                pupils,
                judged,
                single.ours().asked(),
                single.ours(),
                single.rules().first(),
                single.majority());
    }

    private void row(String format, Object... values) {
        out.println(values.length == 0 ? format : String.format(Locale.ROOT, format, values));
    }
}
