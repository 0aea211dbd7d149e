package tamabako.bench.insight;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.function.BiFunction;
import tamabako.insight.pooling.Population;
import tamabako.insight.pooling.PupilRates;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.Habit;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Evidence;
import tamabako.insight.slip.Finding;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.Slip;
import tamabako.insight.slip.SlipFinder;
import tamabako.insight.slip.SlipKind;

/// What it is worth to know a pupil: new wrong answers of one slip are judged by the rates of
/// pupils in general, by the pupil's own as learned from earlier answers, and by the true ones.
final class OwnRates {

    private static final int NEW = 10;

    private final ColumnPlan plan;
    private final int earlier;
    private final Score general = new Score();
    private final Score own = new Score();
    private final Score fromWrong = new Score();
    private final Score truth = new Score();

    /// @param earlier how many wrong answers were seen before, with the right ones between them
    OwnRates(ColumnPlan plan, int earlier) {
        this.plan = plan;
        this.earlier = earlier;
    }

    /// Tries so many pupils, each with rates of his or her own.
    ///
    /// @param rates a pupil's rates, from a typical problem
    OwnRates work(
            int pupils,
            BiFunction<EventTable, SplittableRandom, Rates> rates,
            SplittableRandom chance) {
        for (int i = 0; i < pupils; i++) {
            EventTable typical = EventTable.of(ColumnPlan.column(plan.draw(chance)));
            pupil(rates.apply(typical, chance), chance);
        }
        return this;
    }

    private void pupil(Rates rates, SplittableRandom chance) {
        List<Evidence> seen = new ArrayList<>();
        int wrong = 0;
        while (wrong < earlier) {
            List<Long> rows = plan.draw(chance);
            OptionalLong written = ColumnPupil.writes(rows, Fate.by(rates, chance, Habit.NONE));
            if (written.isPresent()) {
                EventTable table = EventTable.of(ColumnPlan.column(rows));
                SlipFinder.evidence(table, Long.toString(written.getAsLong())).ifPresent(seen::add);
                wrong += seen.getLast().right() ? 0 : 1;
            }
        }
        Population population = Population.shipped();
        SlipFinder byAll = new SlipFinder(PupilRates.of(population, seen));
        List<Evidence> onlyWrong = seen.stream().filter(answer -> !answer.right()).toList();
        SlipFinder byWrong = new SlipFinder(PupilRates.of(population, onlyWrong));
        SlipFinder byGeneral = new SlipFinder(population.rates());
        SlipFinder byTruth = new SlipFinder(rates);
        for (int i = 0; i < NEW; ) {
            List<Long> rows = plan.draw(chance);
            Fate fate = Fate.by(rates, chance, Habit.NONE);
            OptionalLong written = ColumnPupil.writes(rows, fate);
            long total = rows.stream().mapToLong(Long::longValue).sum();
            if (written.isPresent() && written.getAsLong() != total && fate.slips() == 1) {
                EventTable table = EventTable.of(ColumnPlan.column(rows));
                String answer = Long.toString(written.getAsLong());
                SlipKind made = fate.fallen().iterator().next();
                general.note(kinds(byGeneral.find(table, answer)), made);
                own.note(kinds(byAll.find(table, answer)), made);
                fromWrong.note(kinds(byWrong.find(table, answer)), made);
                truth.note(kinds(byTruth.find(table, answer)), made);
                i++;
            }
        }
    }

    private static List<SlipKind> kinds(Finding finding) {
        return finding.slips().stream().map(Slip::kind).toList();
    }

    /// Rates drawn from a Dirichlet distribution around those of `prior`: the shares of the kinds
    /// in a pupil's slips vary, the number of slips does not.
    ///
    /// @param concentration the higher, the closer to the prior
    static Rates dirichlet(
            EventTable typical, Rates prior, double concentration, SplittableRandom chance) {
        double[] shares = new double[SlipKind.values().length];
        double expected = 0;
        double drawn = 0;
        for (SlipKind kind : MainSlips.kinds(typical)) {
            expected += prior.of(kind) * typical.occasions(kind);
        }
        for (SlipKind kind : MainSlips.kinds(typical)) {
            double share = prior.of(kind) * typical.occasions(kind) / expected;
            int index = Arrays.asList(SlipKind.values()).indexOf(kind);
            shares[index] = Gammas.draw(concentration * share, chance);
            drawn += shares[index];
        }
        double all = drawn;
        double slips = expected;
        return prior.with(kind -> {
            int index = Arrays.asList(SlipKind.values()).indexOf(kind);
            return shares[index] == 0
                    ? prior.of(kind)
                    : Math.clamp(slips * shares[index] / all / typical.occasions(kind), 1e-9, 0.9);
        });
    }

    /// One line of the table.
    String line(String pupils) {
        return "| %s | %s | %d | %s | %s | %s | %s |"
                .formatted(plan, pupils, earlier, general, own, fromWrong, truth);
    }

    static String head() {
        return "| problem | pupils | wrong answers before | general rates | own rates | own rates,"
                + " from wrong answers alone | true rates |";
    }
}
