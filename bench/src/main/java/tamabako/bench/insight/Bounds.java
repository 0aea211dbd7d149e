package tamabako.bench.insight;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.function.Function;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.MindPupil;
import tamabako.insight.simulation.ProductPupil;
import tamabako.insight.simulation.QuotientPupil;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Finding;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.Slip;
import tamabako.insight.slip.SlipFinder;
import tamabako.insight.slip.SlipKind;
import tamabako.problems.Attempt;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Terms;

/// The finder on one slip of the simulated pupils, beside the bound for just these pupils.
final class Bounds {

    private static final SlipFinder FINDER = new SlipFinder(Rates.shipped());

    private final SplittableRandom chance;
    private final int problems;

    Bounds(long seed, int problems) {
        this.chance = new SplittableRandom(seed);
        this.problems = problems;
    }

    /// Columns of which only the answer is seen.
    SingleBound columns(ColumnPlan plan) {
        SingleBound bound = new SingleBound();
        for (int i = 0; i < problems; i++) {
            List<Long> rows = plan.draw(chance);
            ask(bound, ColumnPlan.column(rows), fate -> ColumnPupil.writes(rows, fate));
        }
        return bound;
    }

    /// Columns with a total after every so many rows.
    SingleBound totals(ColumnPlan plan, int every) {
        SingleBound bound = new SingleBound();
        for (int i = 0; i < problems; i++) {
            List<Long> rows = plan.draw(chance);
            Column column = ColumnPlan.column(rows);
            EventTable table = EventTable.of(column);
            bound.ask(
                    fate -> seen(ColumnPupil.writesTotals(rows, fate), every),
                    Rates.shipped(),
                    totals -> kinds(FINDER.find(table, attempt(column, totals))));
        }
        return bound;
    }

    private static Optional<List<String>> seen(List<Long> totals, int every) {
        if (totals.isEmpty()) {
            return Optional.empty();
        }
        List<String> seen = new ArrayList<>();
        for (int i = every; i < totals.size(); i += every) {
            seen.add(Long.toString(totals.get(i - 1)));
        }
        seen.add(Long.toString(totals.getLast()));
        return Optional.of(seen);
    }

    private static Attempt attempt(Column column, List<String> totals) {
        return new Attempt(
                column,
                totals.getLast(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                totals.subList(0, totals.size() - 1));
    }

    /// Products of four by three digits.
    SingleBound products() {
        SingleBound bound = new SingleBound();
        for (int i = 0; i < problems; i++) {
            long first = chance.nextLong(1_000, 10_000);
            long second = chance.nextLong(100, 1_000);
            Product product =
                    new Product(
                            "1",
                            BigDecimal.valueOf(first),
                            BigDecimal.valueOf(second),
                            Terms.PLAIN);
            ask(bound, product, fate -> ProductPupil.writes(first, second, fate));
        }
        return bound;
    }

    /// Quotients of four digits by divisors of three, without a remainder.
    SingleBound quotients() {
        SingleBound bound = new SingleBound();
        for (int i = 0; i < problems; i++) {
            long divisor = chance.nextLong(100, 1_000);
            long dividend = chance.nextLong(1_000, 10_000) * divisor;
            Quotient quotient =
                    new Quotient(
                            "1",
                            BigDecimal.valueOf(dividend),
                            BigDecimal.valueOf(divisor),
                            Terms.PLAIN);
            ask(bound, quotient, fate -> QuotientPupil.writes(dividend, divisor, fate));
        }
        return bound;
    }

    /// Columns that are shown or called, and worked in the head.
    SingleBound inMind(ColumnPlan plan, Mode mode) {
        SingleBound bound = new SingleBound();
        for (int i = 0; i < problems; i++) {
            List<Long> rows = plan.draw(chance);
            Column column =
                    new Column(
                            "1",
                            rows.stream().map(BigDecimal::valueOf).toList(),
                            Terms.PLAIN.withMode(mode));
            boolean called = mode == Mode.CALLED;
            ask(
                    bound,
                    column,
                    Rates.shippedInMind(),
                    fate -> OptionalLong.of(MindPupil.writes(rows, called, fate)));
        }
        return bound;
    }

    private static void ask(
            SingleBound bound, Problem problem, Function<Fate, OptionalLong> pupil) {
        ask(bound, problem, Rates.shipped(), pupil);
    }

    private static void ask(
            SingleBound bound, Problem problem, Rates rates, Function<Fate, OptionalLong> pupil) {
        EventTable table = EventTable.of(problem);
        bound.ask(
                fate -> pupil.apply(fate).stream().boxed().findAny(),
                rates,
                written -> kinds(FINDER.find(table, Long.toString(written))));
    }

    private static List<SlipKind> kinds(Finding finding) {
        return finding.slips().stream().map(Slip::kind).toList();
    }
}
