package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.Function;
import tamabako.insight.simulation.Fate;
import tamabako.problems.Problem;
import tamabako.testkit.Draw;

/// Counts how often the kind of a simulated pupil's slip is named first, and among three.
final class Naming {

    private static final SlipFinder FINDER = new SlipFinder(Rates.shipped());

    private int asked;
    private int first;
    private int amongThree;

    /// Lets the pupil slip once, as the shipped rates will have it; a slip that leaves the answer
    /// right, or at which the pupil is stuck, is not asked about.
    void ask(Problem problem, Function<Fate, OptionalLong> pupil, Draw draw) {
        Fate none = Fate.kind();
        long right = pupil.apply(none).orElseThrow();
        double drawn = (double) draw.between(0, (1 << 30) - 1) / (1 << 30);
        int fatal = Fate.draw(none.occasions(), Rates.shipped(), drawn);
        OptionalLong written = pupil.apply(Fate.at(fatal));
        if (written.isEmpty() || written.getAsLong() == right) {
            return;
        }
        Finding finding = FINDER.find(problem, Long.toString(written.getAsLong()));
        List<SlipKind> kinds = finding.slips().stream().map(Slip::kind).toList();
        int rank = kinds.indexOf(none.occasions().get(fatal).kind());
        asked++;
        first += rank == 0 ? 1 : 0;
        amongThree += rank >= 0 && rank < 3 ? 1 : 0;
    }

    /// Whether the finder lists a slip, at its place, for what was written.
    static boolean isAmong(Fate.Occasion occasion, EventTable table, long written) {
        Events slips = table.leadingTo(BigDecimal.valueOf(written));
        for (int i = 0; i < slips.size(); i++) {
            long code = slips.code(i);
            int row = Code.where(code) instanceof Where.Row(int number) ? number : 0;
            boolean sameRod =
                    occasion.rod() == Fate.NO_ROD
                            || Code.rod(code).equals(OptionalInt.of(occasion.rod()));
            if (Code.way(code).kind() == occasion.kind() && occasion.row() == row && sameRod) {
                return slips.weight(i) > 0;
            }
        }
        return false;
    }

    int asked() {
        return asked;
    }

    double first() {
        return (double) first / asked;
    }

    double amongThree() {
        return (double) amongThree / asked;
    }
}
