package tamabako.insight.mastery;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tamabako.insight.pooling.Manner;
import tamabako.insight.slip.Cell;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.Strand;
import tamabako.insight.slip.StrandEvidence;

/// Gathers the answers of one pupil that were worked in one manner, one after another.
///
/// Answers of which the day is not known count as if they were of the last day.
public final class MasteryTally {

    /// Stands for a day that is not known.
    private static final long NO_DAY = Long.MAX_VALUE;

    /// The wrong answers of one day, and what was expected of all answers of that day.
    static final class Day {

        private final double[] expected = new double[Strand.COUNT];
        private final List<StrandEvidence> wrong = new ArrayList<>();
        private final Map<String, int[]> rightAndWrong = new TreeMap<>();

        /// By [Strand#index()].
        double[] expected() {
            return expected;
        }

        List<StrandEvidence> wrong() {
            return wrong;
        }

        /// How many are right and how many wrong, by kind of problem.
        Map<String, int[]> rightAndWrong() {
            return rightAndWrong;
        }
    }

    private final Manner manner;
    private final TreeMap<Long, Day> days = new TreeMap<>();
    private final int[] steps = new int[Move.values().length];
    private final int[] cells = new int[Cell.COUNT];
    private int answers;
    private int wrong;
    private int notRead;

    public MasteryTally(Manner manner) {
        this.manner = manner;
    }

    /// Adds an answer.
    public void add(MasteryAnswer answer) {
        Day day = days.computeIfAbsent(answer.day().orElse(NO_DAY), _ -> new Day());
        StrandEvidence evidence = answer.evidence();
        for (int strand = 0; strand < Strand.COUNT; strand++) {
            day.expected()[strand] += evidence.expected(strand);
        }
        evidence.addSteps(steps, cells);
        int[] counts = day.rightAndWrong().computeIfAbsent(answer.kind(), _ -> new int[2]);
        counts[evidence.right() ? 0 : 1]++;
        answers++;
        if (!evidence.right()) {
            wrong++;
            day.wrong().add(evidence);
        }
    }

    /// Notes an answer that is none, or no number.
    public void addNotRead() {
        notRead++;
    }

    /// How the answers were worked.
    public Manner manner() {
        return manner;
    }

    /// How many answers could be read.
    public int answers() {
        return answers;
    }

    /// How many of them are wrong.
    public int wrong() {
        return wrong;
    }

    /// How many answers were none, or no number.
    public int notRead() {
        return notRead;
    }

    /// How many steps there were by `move`.
    public int steps(Move move) {
        return steps[new Strand.OfMove(move).index()];
    }

    /// How many steps of `cell` there were.
    int steps(Cell cell) {
        return cells[cell.index()];
    }

    /// The last day of which an answer is known; 0 where there is none.
    public long lastDay() {
        Long last = days.isEmpty() ? null : days.lowerKey(NO_DAY);
        return last == null ? 0 : last;
    }

    /// The answers of a day, and how much they still count.
    record Counted(Day day, double weight) {}

    /// All days, with how much their answers still count on `today`.
    List<Counted> counted(Forgetting forgetting, long today) {
        List<Counted> counted = new ArrayList<>();
        days.forEach((day, answersOfDay) ->
                counted.add(
                        new Counted(
                                answersOfDay,
                                day == NO_DAY ? 1 : forgetting.left(Math.max(0, today - day)))));
        return counted;
    }

    /// What the answers show together on the last day that one was given.
    ///
    /// @param population pupils in general
    /// @param demand what is asked
    public PupilMastery told(MasteryPopulation population, Demand demand) {
        return told(population, demand, lastDay());
    }

    /// What they show on `today`, in days since 1970.
    public PupilMastery told(MasteryPopulation population, Demand demand, long today) {
        return new Telling(this, population, demand, today).mastery();
    }
}
