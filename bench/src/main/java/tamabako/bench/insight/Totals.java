package tamabako.bench.insight;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.TreeMap;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Finding;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.Slip;
import tamabako.insight.slip.SlipFinder;
import tamabako.insight.slip.SlipKind;
import tamabako.problems.Attempt;
import tamabako.problems.Column;

/// One wrong answer from one slip, with running totals: half way, or after every row.
final class Totals {

    private final ColumnPlan plan;
    private final int every;
    private final SlipFinder finder = new SlipFinder(Rates.shipped());
    private final Score kinds = new Score();
    private final Score rows = new Score();
    private final Map<SlipKind, Map<SlipKind, Integer>> named = new EnumMap<>(SlipKind.class);

    /// @param every a total after so many rows
    Totals(ColumnPlan plan, int every) {
        this.plan = plan;
        this.every = every;
    }

    Totals work(int trials, SplittableRandom random) {
        for (int i = 0; i < trials; i++) {
            ask(plan.draw(random), random);
        }
        return this;
    }

    private void ask(List<Long> drawn, SplittableRandom random) {
        Fate none = Fate.kind();
        List<Long> right = ColumnPupil.writesTotals(drawn, none);
        int fatal = Fate.draw(none.occasions(), Rates.shipped(), random.nextDouble());
        List<Long> totals = ColumnPupil.writesTotals(drawn, Fate.at(fatal));
        if (totals.isEmpty() || totals.getLast().equals(right.getLast())) {
            return;
        }
        List<String> onTheWay = new ArrayList<>();
        for (int i = every; i < drawn.size(); i += every) {
            onTheWay.add(Long.toString(totals.get(i - 1)));
        }
        Column column = ColumnPlan.column(drawn);
        Attempt attempt =
                new Attempt(
                        column,
                        Long.toString(totals.getLast()),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        onTheWay);
        Finding finding = finder.find(EventTable.of(column), attempt);
        Fate.Occasion truth = none.occasions().get(fatal);
        kinds.note(finding.slips().stream().map(Slip::kind).toList(), truth.kind());
        named.computeIfAbsent(truth.kind(), _ -> new TreeMap<>())
                .merge(finding.slips().getFirst().kind(), 1, Integer::sum);
        if (truth.row() > 0) {
            rows.note(finding.slips().getFirst().row().orElse(0) == truth.row());
        }
    }

    /// One line of the table.
    String line() {
        return "| %s | %d | %s | %s |".formatted(plan, every, kinds, rows.share());
    }

    /// What was named, by what was made.
    Map<SlipKind, Map<SlipKind, Integer>> named() {
        return named;
    }

    static String head() {
        return "| problem | a total every so many rows | kind: first / three | row named |";
    }
}
