package tamabako.bench.insight;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.BiFunction;
import java.util.function.Function;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Omission;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipKind;
import tamabako.problems.Mode;

/// Writes the tables of docs/validation.md on slips.
public final class SlipValidation {

    private static final long SEED = 20_261_130;

    private static final List<ColumnPlan> PLANS =
            List.of(
                    new ColumnPlan(10, 10),
                    new ColumnPlan(10, 5),
                    new ColumnPlan(10, 3),
                    new ColumnPlan(5, 2));

    /// How close the shares of single pupils are to those of all: about as much as ten slips tell.
    private static final double CONCENTRATION = 10;

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
        if (asked.isEmpty() || asked.contains("bounds")) {
            validation.bounds(200);
        }
        if (asked.isEmpty() || asked.contains("mind")) {
            validation.inMind(200);
        }
        if (asked.isEmpty() || asked.contains("omissions")) {
            validation.omissions(4_000);
        }
        if (asked.isEmpty() || asked.contains("own")) {
            validation.ownRates(150);
        }
        if (asked.isEmpty() || asked.contains("free")) {
            validation.free(16_000);
        }
        if (asked.isEmpty() || asked.contains("totals")) {
            validation.totals(3_000);
        }
        if (asked.isEmpty() || asked.contains("main")) {
            validation.mainSlips(500);
        }
        if (asked.isEmpty() || asked.contains("rules")) {
            validation.rules(150);
        }
    }

    private void bounds(int problems) {
        row("| problem | seen | ours: first / three | bound: first / three |");
        for (ColumnPlan plan : PLANS) {
            row("| %s | answer | %s |", plan, new Bounds(SEED, problems).columns(plan));
        }
        for (ColumnPlan plan : PLANS.subList(0, 3)) {
            row("| %s | half way | %s |", plan, new Bounds(SEED, problems / 5).totals(plan, 5));
            row("| %s | every row | %s |", plan, new Bounds(SEED, problems / 5).totals(plan, 1));
        }
        row("| product 4 × 3 | answer | %s |", new Bounds(SEED, problems).products());
        row("| quotient 4, divisor 3 | answer | %s |", new Bounds(SEED, problems).quotients());
    }

    private void inMind(int problems) {
        row("| problem | work | ours: first / three | bound: first / three |");
        for (ColumnPlan plan : List.of(new ColumnPlan(10, 3), new ColumnPlan(7, 2))) {
            for (Mode mode : List.of(Mode.MENTAL, Mode.CALLED)) {
                row("| %s | %s | %s |", plan, mode, new Bounds(SEED, problems).inMind(plan, mode));
            }
        }
    }

    private void omissions(int wrong) {
        row("| left out %s", FreeSlips.head());
        for (ColumnPlan plan : PLANS.subList(0, 2)) {
            omission("nothing", plan, Set.of(), Priors::shipped, wrong);
            for (Omission part : Omission.values()) {
                omission(part.name(), plan, Set.of(part), Priors::shipped, wrong);
            }
            omission("wrong prior (U)", plan, Set.of(), Priors::even, wrong);
        }
    }

    private void omission(
            String name,
            ColumnPlan plan,
            Set<Omission> omitted,
            Function<EventTable, Rates> judged,
            int wrong) {
        FreeSlips slips = new FreeSlips(plan, omitted, judged);
        row("| %s %s", name, slips.work(wrong, new SplittableRandom(SEED)).line());
    }

    private void ownRates(int pupils) {
        row(OwnRates.head());
        for (ColumnPlan plan : PLANS.subList(0, 2)) {
            for (double share : new double[] {0.5, 0.7}) {
                own(
                        plan,
                        pupils,
                        "main slip " + share,
                        (typical, chance) -> {
                            List<SlipKind> kinds = MainSlips.kinds(typical);
                            SlipKind main = kinds.get(chance.nextInt(kinds.size()));
                            return MainSlips.withShare(Rates.shipped(), typical, main, share);
                        });
            }
            own(
                    plan,
                    pupils,
                    "Dirichlet around R",
                    (typical, chance) ->
                            OwnRates.dirichlet(typical, Rates.shipped(), CONCENTRATION, chance));
            own(
                    plan,
                    pupils,
                    "Dirichlet around U",
                    (typical, chance) ->
                            OwnRates.dirichlet(
                                    typical, Priors.even(typical), CONCENTRATION, chance));
        }
    }

    private void own(
            ColumnPlan plan,
            int pupils,
            String name,
            BiFunction<EventTable, SplittableRandom, Rates> rates) {
        OwnRates own = new OwnRates(plan, 20);
        row(own.work(pupils, rates, new SplittableRandom(SEED)).line(name));
    }

    private void free(int wrong) {
        row(FreeSlips.head());
        for (ColumnPlan plan : PLANS) {
            row(new FreeSlips(plan).work(wrong, new SplittableRandom(SEED)).line());
        }
    }

    private void totals(int trials) {
        row(Totals.head());
        for (ColumnPlan plan : PLANS.subList(0, 3)) {
            for (int every : new int[] {5, 1}) {
                Totals totals = new Totals(plan, every);
                row(totals.work(trials, new SplittableRandom(SEED)).line());
                if (System.getProperty("confusions") != null) {
                    totals.named().forEach((made, named) -> row("%s: %s", made, named));
                }
            }
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

    @SuppressWarnings("AnnotateFormatMethod") // the formats stand above, each beside its values
    private void row(String format, Object... values) {
        out.println(values.length == 0 ? format : String.format(Locale.ROOT, format, values));
    }
}
