package tamabako.bench.insight;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Function;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.Habit;
import tamabako.insight.slip.Diagnosis;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Finding;
import tamabako.insight.slip.Omission;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.Slip;
import tamabako.insight.slip.SlipFinder;
import tamabako.insight.slip.SlipKind;

/// Pupils who slip as often as chance has it, once, twice or more in one column.
final class FreeSlips {

    private final ColumnPlan plan;
    private final Set<Omission> omitted;
    private final Function<EventTable, Rates> judged;
    private final Score right = new Score();
    private final Score alone = new Score();
    private final Score explained = new Score();
    private final Score reached = new Score();
    private final Score oneSlip = new Score();
    private final Score twoSlips = new Score();
    private final Score random = new Score();
    private final Calibration calibration = new Calibration();

    FreeSlips(ColumnPlan plan) {
        this(plan, Set.of(), Priors::shipped);
    }

    /// @param omitted what the finder goes without
    /// @param judged the rates by which pupils are judged
    FreeSlips(ColumnPlan plan, Set<Omission> omitted, Function<EventTable, Rates> judged) {
        this.plan = plan;
        this.omitted = omitted;
        this.judged = judged;
    }

    /// Works columns until so many answers are wrong.
    FreeSlips work(int wrong, SplittableRandom chance) {
        while (explained.asked() < wrong) {
            List<Long> rows = plan.draw(chance);
            Fate fate = Fate.by(Rates.shipped(), chance, Habit.NONE);
            OptionalLong written = ColumnPupil.writes(rows, fate);
            long total = rows.stream().mapToLong(Long::longValue).sum();
            if (written.isPresent()) {
                right.note(written.getAsLong() == total);
                if (written.getAsLong() != total) {
                    EventTable table = EventTable.without(omitted, ColumnPlan.column(rows));
                    SlipFinder finder = new SlipFinder(judged.apply(table));
                    judge(finder.diagnose(table, Long.toString(written.getAsLong())), fate);
                    guess(finder, table, chance);
                }
            }
        }
        return this;
    }

    /// "None known" is right where there were several slips.
    private void judge(Diagnosis diagnosis, Fate fate) {
        Finding finding = diagnosis.finding();
        List<SlipKind> ranked = finding.slips().stream().map(Slip::kind).toList();
        SlipKind named = ranked.getFirst();
        alone.note(fate.slips() == 1);
        explained.note(finding.verdict() != Finding.Verdict.NONE_KNOWN);
        reached.note(finding.explained() > 0);
        calibration.note(
                Math.min(1, diagnosis.slips().of(named)),
                named == SlipKind.NONE_KNOWN ? fate.slips() > 1 : fate.fallen().contains(named));
        if (fate.slips() == 1) {
            oneSlip.note(ranked, fate.fallen().iterator().next());
        } else {
            twoSlips.note(fate.fallen().contains(named));
        }
    }

    /// An answer of the same length that has nothing to do with the column.
    private void guess(SlipFinder finder, EventTable table, SplittableRandom chance) {
        int digits = table.answer().precision();
        long least = Math.powExact(10L, digits - 1);
        BigDecimal guessed = BigDecimal.valueOf(chance.nextLong(least, 10 * least));
        Finding finding = finder.find(table, guessed.toPlainString());
        random.note(finding.verdict() != Finding.Verdict.NONE_KNOWN);
    }

    /// One line of the table.
    String line() {
        return "| %s | %s | %s | %s | %s | %s | %s | %.3f | %s |"
                .formatted(
                        plan,
                        right.share(),
                        alone.share(),
                        reached.share(),
                        explained.share(),
                        oneSlip,
                        twoSlips.share(),
                        calibration.error(),
                        random.share());
    }

    static String head() {
        return "| problem | right | of the wrong: one slip | some slip leads to it | explained |"
                + " one slip: first / three | more: named is among them | calibration error |"
                + " random answers explained |";
    }
}
