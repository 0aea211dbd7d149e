package tamabako.insight.mastery;

import java.util.Collection;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.Strand;
import tamabako.insight.slip.StrandEvidence;

/// How seldom a pupil may slip: what the problems of a grade ask, or those that the pupil works.
///
/// The marks of all moves stand to each other as the usual rates do. A pupil who is on the mark in
/// every move works a typical problem without a slip of the hand in nine cases of ten. So long
/// problems set lower marks than short ones.
public final class Demand {

    /// How often a typical problem goes without a slip of the hand on the mark.
    public static final double HAND_RIGHT = 0.9;

    /// Which share of a kind of problem must be right.
    public static final double RIGHT = 0.8;

    private static final int MOVES = Move.values().length;

    private final double[] expected;
    private final double[] steps;
    private final double times;

    private Demand(double[] expected, double[] steps) {
        this.expected = expected;
        this.steps = steps;
        double hand = 0;
        for (int move = 0; move < MOVES; move++) {
            hand += expected[move];
        }
        this.times = hand == 0 ? 1 : -Math.log(HAND_RIGHT) / hand;
    }

    /// What these problems ask, each as much as any other.
    ///
    /// @param usual the rates by which the answers are weighed
    public static Demand of(Collection<EventTable> typical, Rates usual) {
        double[] expected = new double[Strand.COUNT];
        double[] steps = new double[MOVES];
        for (EventTable table : typical) {
            double[] ofOne = StrandEvidence.expected(table, usual);
            for (int strand = 0; strand < Strand.COUNT; strand++) {
                expected[strand] += ofOne[strand] / typical.size();
            }
            for (Move move : Move.values()) {
                steps[new Strand.OfMove(move).index()] +=
                        (double) table.steps(move) / typical.size();
            }
        }
        return new Demand(expected, steps);
    }

    /// What the problems ask that the pupil has worked.
    public static Demand of(MasteryTally tally) {
        double[] expected = new double[Strand.COUNT];
        double[] steps = new double[MOVES];
        int answers = Math.max(1, tally.answers());
        for (MasteryTally.Counted counted : tally.counted(Forgetting.NONE, tally.lastDay())) {
            for (int strand = 0; strand < Strand.COUNT; strand++) {
                expected[strand] += counted.day().expected()[strand] / answers;
            }
        }
        for (Move move : Move.values()) {
            steps[new Strand.OfMove(move).index()] = (double) tally.steps(move) / answers;
        }
        return new Demand(expected, steps);
    }

    /// The mark: at most so many times as often as usual a move may go wrong; 1 where no problem
    /// has a step of the hand.
    public double times() {
        return times;
    }

    /// How many slips in `strand` are expected of a usual pupil in a typical problem.
    double expected(Strand strand) {
        return expected[strand.index()];
    }

    /// How many steps a typical problem takes by `move`.
    double steps(Move move) {
        return steps[new Strand.OfMove(move).index()];
    }
}
