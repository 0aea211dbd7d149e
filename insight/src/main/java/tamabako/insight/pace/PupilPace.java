package tamabako.insight.pace;

import java.util.Arrays;
import java.util.List;
import tamabako.problems.Problem;

/// How fast one pupil works.
public final class PupilPace {

    /// Fewer times than this say nothing of a pupil's speed.
    public static final int ENOUGH = 5;

    private static final double NINE_IN_TEN = 1.6448536269514722;

    /// How fast a pupil is altogether.
    ///
    /// @param times how many times as long as the middle pupil takes: the middle estimate
    /// @param low it is above this with chance .95
    /// @param high it is below this with chance .95
    public record Altogether(double times, double low, double high) {}

    private final int problems;
    private final PaceModel model;
    private final double[] typical;
    private final int[] steps;
    private final double[] usualSeconds;

    PupilPace(int problems, PaceModel model, double[] typical, int[] steps, double[] usualSeconds) {
        this.problems = problems;
        this.model = model;
        this.typical = typical;
        this.steps = steps;
        this.usualSeconds = usualSeconds;
    }

    /// How many times there are.
    public int problems() {
        return problems;
    }

    /// Whether they are enough to tell of the pupil's speed.
    public boolean isEnough() {
        return problems >= ENOUGH;
    }

    /// How many times as long as the middle pupil this pupil takes for the problems that the pupil
    /// has worked.
    public Altogether altogether() {
        double log = 0;
        double[] direction = new double[Part.COUNT + 1];
        direction[Part.COUNT] = -1;
        System.arraycopy(typical, 0, direction, 0, Part.COUNT);
        for (int i = 0; i <= Part.COUNT; i++) {
            log += direction[i] * model.own()[i];
        }
        double deviation = Math.sqrt(model.variance(direction));
        return new Altogether(
                Math.exp(log),
                Math.exp(log - NINE_IN_TEN * deviation),
                Math.exp(log + NINE_IN_TEN * deviation));
    }

    /// Every part of the work.
    public List<PartPace> parts() {
        return Arrays.stream(Part.values()).map(this::part).toList();
    }

    private PartPace part(Part part) {
        double[] direction = new double[Part.COUNT + 1];
        direction[part.index()] = 1;
        direction[Part.COUNT] = -1;
        double log = model.own()[part.index()] - model.own()[Part.COUNT];
        double deviation = Math.sqrt(model.variance(direction));
        double[] beside = new double[Part.COUNT + 1];
        double besideLog = 0;
        for (int i = 0; i < Part.COUNT; i++) {
            beside[i] = (i == part.index() ? 1 : 0) - typical[i];
            besideLog += beside[i] * model.own()[i];
        }
        double besideDeviation = Math.sqrt(model.variance(beside));
        int met = steps[part.index()];
        double usual = met == 0 ? 0 : usualSeconds[part.index()] / met;
        double middle = Math.exp(model.population().means().get(part.index()));
        return new PartPace(
                part,
                Math.exp(log),
                Math.exp(log - NINE_IN_TEN * deviation),
                Math.exp(log + NINE_IN_TEN * deviation),
                Math.exp(besideLog - NINE_IN_TEN * besideDeviation),
                Math.exp(besideLog + NINE_IN_TEN * besideDeviation),
                usual * middle * Math.exp(log),
                met,
                model.tells(part));
    }

    /// The natural logarithm of the seconds that someone takes for a problem who is as slow in each
    /// part of the work as this pupil, but altogether neither fast nor slow. With no times it is
    /// what pupils in general take.
    public double shape(WorkParts parts) {
        return model.shape(parts.seconds());
    }

    /// How doubtful it is how many times as long as `others` these problems take the pupil: the
    /// standard deviation of the difference of their mean logarithms, as far as it comes from not
    /// knowing how slow the pupil is in each part.
    ///
    /// @param some one at least
    /// @param others one at least
    public double doubtBeside(List<WorkParts> some, List<WorkParts> others) {
        double[] direction = new double[Part.COUNT + 1];
        some.forEach(one -> model.addShares(one.seconds(), direction, 1.0 / some.size()));
        others.forEach(one -> model.addShares(one.seconds(), direction, -1.0 / others.size()));
        return Math.sqrt(model.variance(direction));
    }

    PaceModel model() {
        return model;
    }

    /// How far the times of this pupil vary from problem to problem: a standard deviation of
    /// logarithms.
    public double noise() {
        return model.noise();
    }

    /// How long the pupil is expected to take for `problem`.
    ///
    /// @throws tamabako.frame.Unworkable if it does not fit the longest frame
    public LogSeconds expect(Problem problem) {
        return expect(WorkParts.of(problem));
    }

    /// The same for a problem that was taken apart already.
    public LogSeconds expect(WorkParts parts) {
        return model.expect(parts.seconds());
    }
}
