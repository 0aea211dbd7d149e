package tamabako.bench.insight;

import java.util.List;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import tamabako.insight.mastery.MasteryAnswer;
import tamabako.insight.mastery.MasteryTally;
import tamabako.insight.pooling.Manner;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.Habit;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.Strand;
import tamabako.insight.slip.StrandEvidence;
import tamabako.problems.Attempt;
import tamabako.problems.Column;

/// One simulated pupil, what is seen of the work, and what was truly done.
final class MovesMade {

    private static final int MOVES = Move.values().length;

    private final MasteryPupil pupil;
    private final MasteryTally tally = new MasteryTally(Manner.FRAME);
    private final double[] slips = new double[MOVES];
    private final double[] expected = new double[MOVES];
    private final double[] steps = new double[MOVES];
    private final double[] stepsInWrong = new double[MOVES];

    MovesMade(MasteryPupil pupil) {
        this.pupil = pupil;
    }

    /// Works so many columns. A pupil whose beads run out gives no answer.
    void work(ColumnPlan plan, int problems, SplittableRandom chance) {
        for (int i = 0; i < problems; i++) {
            List<Long> rows = plan.draw(chance);
            Fate fate = Fate.by(pupil.rates(), chance, Habit.NONE);
            OptionalLong written = ColumnPupil.writes(rows, fate);
            if (written.isPresent()) {
                note(ColumnPlan.column(rows), written.getAsLong(), fate);
            }
        }
    }

    private void note(Column column, long written, Fate fate) {
        EventTable table = EventTable.of(column);
        MasteryAnswer.of(table, Attempt.of(column, Long.toString(written))).ifPresent(tally::add);
        boolean right = column.answer().value().longValueExact() == written;
        double[] usual = StrandEvidence.expected(table, Rates.shipped());
        for (Move move : Move.values()) {
            int i = index(move);
            slips[i] += fate.slipsIn(move);
            expected[i] += usual[i];
            steps[i] += table.steps(move);
            stepsInWrong[i] += right ? 0 : table.steps(move);
        }
    }

    private static int index(Move move) {
        return new Strand.OfMove(move).index();
    }

    MasteryPupil pupil() {
        return pupil;
    }

    MasteryTally tally() {
        return tally;
    }

    /// How often the steps of a move stand in wrong answers: all that right and wrong can tell.
    double shareOfWrong(Move move) {
        return stepsInWrong[index(move)] / Math.max(1, steps[index(move)]);
    }

    /// How many times as often as usual the pupil slipped, by the true slips, drawn toward the
    /// usual as pupils who differ by `shape` would have it.
    double labelled(Move move, double shape) {
        return (shape + slips[index(move)]) / (shape + expected[index(move)]);
    }
}
