package tamabako.insight.pace;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import tamabako.frame.CarryOrder;
import tamabako.frame.Cause;
import tamabako.frame.Setup;
import tamabako.frame.Step;
import tamabako.frame.Technique;
import tamabako.frame.Trace;
import tamabako.frame.Working;
import tamabako.frame.walk.PackedNumber;
import tamabako.frame.walk.PackedStep;
import tamabako.frame.walk.PackedTrace;
import tamabako.insight.slip.Move;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Story;
import tamabako.problems.effort.Effort;
import tamabako.problems.effort.StrokeTimes;

/// What a problem takes of each [Part], worked in the common way: how many steps, and how many
/// seconds of a usual pupil.
public final class WorkParts {

    /// The most digits of a row for which the total surely finds its rods in a packed trace, loans
    /// included.
    private static final int MOST_DIGITS = PackedNumber.MOST_DIGITS - 3;

    private static final int MOST_ROWS = 100;
    private static final StrokeTimes USUAL = StrokeTimes.USUAL;

    private final double[] seconds = new double[Part.COUNT];
    private final int[] steps = new int[Part.COUNT];
    private int strokes;

    private WorkParts() {}

    /// The parts of `problem`; the earlier sums of a story included.
    ///
    /// @throws tamabako.frame.Unworkable if it does not fit the longest frame
    public static WorkParts of(Problem problem) {
        WorkParts parts = new WorkParts();
        double moves = parts.addHand(problem);
        double all = Effort.of(problem).seconds();
        double around = around(problem);
        parts.seconds[Part.TABLE.index()] = Math.max(0, all - moves - around);
        parts.seconds[Part.READING_AND_WRITING.index()] = Math.min(around, all - moves);
        return parts;
    }

    /// The mean of some problems: as many seconds of each part as they take in the mean, and their
    /// steps rounded.
    ///
    /// @param some one at least
    public static WorkParts mean(List<WorkParts> some) {
        WorkParts mean = new WorkParts();
        for (int i = 0; i < Part.COUNT; i++) {
            for (WorkParts one : some) {
                mean.seconds[i] += one.seconds[i] / some.size();
                mean.steps[i] += one.steps[i];
            }
            mean.steps[i] = Math.round((float) mean.steps[i] / some.size());
        }
        mean.strokes = some.stream().mapToInt(WorkParts::strokes).sum() / some.size();
        return mean;
    }

    /// The seconds of all steps, noted on the way.
    private double addHand(Problem problem) {
        if (problem.terms().told().orElse(null) instanceof Story story) {
            story.earlier().forEach(this::addHand);
        }
        if (!(problem instanceof Column column) || !addPacked(column)) {
            Working working = problem.work(Setup.COMMON);
            addTrace(working.setting());
            addTrace(working.trace());
        }
        double moves = 0;
        for (double ofPart : seconds) {
            moves += ofPart;
        }
        return moves;
    }

    private boolean addPacked(Column column) {
        List<BigDecimal> rows = column.rows();
        int places = 0;
        int whole = 1;
        for (BigDecimal row : rows) {
            places = Math.max(places, row.scale());
            whole = Math.max(whole, row.precision() - row.scale());
        }
        if (places + whole > MOST_DIGITS || rows.size() > MOST_ROWS) {
            return false;
        }
        PackedTrace trace = new PackedTrace(places, CarryOrder.REMOVE_THEN_CARRY);
        for (BigDecimal row : rows) {
            trace.put(PackedNumber.pack(row, places));
        }
        for (int i = 0; i < trace.size(); i++) {
            int step = trace.step(i);
            add(
                    PackedStep.before(step),
                    PackedStep.digit(step),
                    PackedStep.after(step),
                    PackedStep.technique(step),
                    PackedStep.isPassed(step));
        }
        return true;
    }

    private void addTrace(Trace trace) {
        for (Step step : trace.steps()) {
            boolean passed =
                    step.cause() instanceof Cause.Carry || step.cause() instanceof Cause.Borrow;
            add(
                    step.before().value(),
                    step.digit(),
                    step.after().value(),
                    step.technique(),
                    passed);
        }
    }

    private void add(int before, int digit, int after, Technique technique, boolean passed) {
        Move move = passed && technique.passesTen() ? Move.CARRY_RUNS_ON : Move.of(before, digit);
        int upper = after / 5 - before / 5;
        int lower = after % 5 - before % 5;
        boolean both = upper != 0 && lower != 0;
        // Two strokes go together unless both take beads away.
        int motions = both && upper < 0 && lower < 0 ? 2 : 1;
        int part = Part.of(move).index();
        steps[part]++;
        strokes += both ? 2 : 1;
        seconds[part] += of(USUAL.steps(), technique) + motions * motion();
    }

    private static double around(Problem problem) {
        double earlier = 0;
        boolean story = problem.terms().told().orElse(null) instanceof Story;
        if (problem.terms().told().orElse(null) instanceof Story told) {
            earlier = told.earlier().stream().mapToDouble(WorkParts::around).sum();
        }
        int numbers = problem instanceof Column column ? column.rows().size() : 2;
        return earlier
                + of(USUAL.parts(), StrokeTimes.Part.PROBLEM)
                + of(USUAL.parts(), StrokeTimes.Part.NUMBER) * numbers
                + (story ? of(USUAL.parts(), StrokeTimes.Part.STORY) : 0)
                + of(USUAL.parts(), StrokeTimes.Part.WRITTEN)
                        * problem.answer().value().precision();
    }

    private static double motion() {
        return of(USUAL.parts(), StrokeTimes.Part.MOTION);
    }

    private static <K> double of(Map<K, Double> times, K key) {
        return Objects.requireNonNull(times.get(key));
    }

    /// How many seconds a usual pupil takes for a part.
    public double seconds(Part part) {
        return seconds[part.index()];
    }

    /// How many seconds a usual pupil takes for all parts together.
    public double total() {
        double all = 0;
        for (double ofPart : seconds) {
            all += ofPart;
        }
        return all;
    }

    /// How many steps there are by the move of a part; 0 for the parts that are no move.
    public int steps(Part part) {
        return steps[part.index()];
    }

    /// How many strokes of the fingers there are.
    public int strokes() {
        return strokes;
    }

    double[] seconds() {
        return seconds;
    }
}
