package tamabako.insight.mastery;

import java.util.Arrays;
import java.util.Collection;
import java.util.Map;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.Strand;
import tamabako.insight.slip.StrandEvidence;

/// How seldom a pupil may slip: what the problems of a grade ask, or those that the pupil works.
///
/// The marks of all moves stand to each other as the usual rates do. A pupil who is on the mark in
/// every move works a typical problem without a slip of the hand in nine cases of ten. So long
/// problems set lower marks than short ones. The same holds of the skills of multiplying and
/// dividing, in a typical problem that asks for any.
public final class Demand {

    /// How often a typical problem goes without a slip of the hand on the mark.
    public static final double HAND_RIGHT = 0.9;

    /// Which share of a kind of problem must be right.
    public static final double RIGHT = 0.8;

    private static final int MOVES = Move.values().length;

    private final double[] expected;
    private final double[] steps;
    private final double times;
    private final double skillTimes;

    /// @param reckoned which part of the problems asks for a skill, 0 to 1
    private Demand(double[] expected, double[] steps, double reckoned) {
        this.expected = expected;
        this.steps = steps;
        double hand = 0;
        for (int move = 0; move < MOVES; move++) {
            hand += expected[move];
        }
        double skills = 0;
        for (Skill skill : Skill.values()) {
            skills += expected[index(skill)];
        }
        this.times = hand == 0 ? 1 : -Math.log(HAND_RIGHT) / hand;
        this.skillTimes = skills == 0 ? 1 : -Math.log(HAND_RIGHT) * reckoned / skills;
    }

    /// What these problems ask, each as much as any other.
    ///
    /// @param usual the rates by which the answers are weighed
    public static Demand of(Collection<EventTable> typical, Rates usual) {
        double[] expected = new double[Strand.COUNT];
        double[] steps = new double[MOVES];
        double reckoned = 0;
        for (EventTable table : typical) {
            double[] ofOne = StrandEvidence.expected(table, usual);
            reckoned += ofOne[index(Skill.TABLES)] > 0 ? 1.0 / typical.size() : 0;
            for (int strand = 0; strand < Strand.COUNT; strand++) {
                expected[strand] += ofOne[strand] / typical.size();
            }
            for (Move move : Move.values()) {
                steps[new Strand.OfMove(move).index()] +=
                        (double) table.steps(move) / typical.size();
            }
        }
        return new Demand(expected, steps, reckoned);
    }

    /// What the problems ask that the pupil has worked.
    public static Demand of(MasteryTally tally) {
        double[] expected = new double[Strand.COUNT];
        double[] steps = new double[MOVES];
        double reckoned = 0;
        int answers = Math.max(1, tally.answers());
        for (MasteryTally.Counted counted : tally.counted(Forgetting.NONE, tally.lastDay())) {
            for (int strand = 0; strand < Strand.COUNT; strand++) {
                expected[strand] += counted.day().expected()[strand] / answers;
            }
            for (Map.Entry<String, int[]> kind : counted.day().rightAndWrong().entrySet()) {
                boolean column = kind.getKey().equals("column");
                reckoned += column ? 0 : (double) Arrays.stream(kind.getValue()).sum() / answers;
            }
        }
        for (Move move : Move.values()) {
            steps[new Strand.OfMove(move).index()] = (double) tally.steps(move) / answers;
        }
        return new Demand(expected, steps, reckoned);
    }

    /// The mark: at most so many times as often as usual a move may go wrong; 1 where no problem
    /// has a step of the hand.
    public double times() {
        return times;
    }

    /// The mark of the skills: at most so many times as often as usual one may go wrong; 1 where no
    /// problem asks for any.
    public double skillTimes() {
        return skillTimes;
    }

    private static int index(Skill skill) {
        return new Strand.OfKind(skill.slip()).index();
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
