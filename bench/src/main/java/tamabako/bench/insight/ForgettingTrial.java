package tamabako.bench.insight;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import tamabako.insight.mastery.Demand;
import tamabako.insight.mastery.Forgetting;
import tamabako.insight.mastery.MasteryAnswer;
import tamabako.insight.mastery.MasteryPopulation;
import tamabako.insight.mastery.MasteryTally;
import tamabako.insight.mastery.MoveMastery;
import tamabako.insight.mastery.PupilMastery;
import tamabako.insight.mastery.Spread;
import tamabako.insight.pooling.Manner;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.Habit;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.StrandEvidence;
import tamabako.problems.Attempt;
import tamabako.problems.Column;

/// Pupils whose rates change from day to day: how well the rates of the last day are told when old
/// answers count less with every day, and how well that day's further answers are foretold.
///
/// Sixteen weeks, three of every four with three columns of ten rows of five digits a day, the
/// fourth of rest.
final class ForgettingTrial {

    /// How rates change.
    enum Change {
        NONE("rates stay"),
        WANDERING("each move wanders, .05 a day"),
        RESTS("slips twice as many after a week of rest, three weeks to mend"),
        LEARNING("slips .01 fewer each day");

        private final String words;

        Change(String words) {
            this.words = words;
        }

        /// The change of a move's logarithm in a day.
        private double of(boolean rests, SplittableRandom chance) {
            return switch (this) {
                case NONE -> 0;
                case WANDERING -> 0.05 * chance.nextGaussian();
                case RESTS -> Math.log(2) / (rests ? 7 : -21);
                case LEARNING -> -0.01;
            };
        }
    }

    private static final ColumnPlan PLAN = new ColumnPlan(10, 5);
    private static final int WEEKS = 16;
    private static final int EACH_DAY = 3;
    private static final int FORETOLD = 10;

    /// A problem of the last day that the judge has not seen.
    private record Unseen(EventTable table, boolean right) {}

    /// What one pupil has done, and what the rates are on the last day.
    private record Worked(
            MasteryTally tally,
            MasteryPupil pupil,
            Map<Move, Double> shifts,
            List<Unseen> unseen) {}

    private final Change change;
    private final int last;
    private final TrueRates truth;
    private final List<Worked> pupils;

    /// @param last the last day, counted from 0
    ForgettingTrial(Change change, int last, Spread spread, int count, SplittableRandom chance) {
        this.change = change;
        this.last = last;
        this.truth = new TrueRates(PLAN, chance.split());
        List<MasteryPupil> drawn = new ArrayList<>();
        List<SplittableRandom> chances = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            drawn.add(MasteryPupil.draw(spread, 0, chance));
            chances.add(chance.split());
        }
        this.pupils =
                IntStream.range(0, count)
                        .parallel()
                        .mapToObj(i -> work(drawn.get(i), chances.get(i)))
                        .toList();
    }

    /// The last day of the last week of work, and the first after the week of rest that follows.
    static List<Integer> lastDays() {
        return List.of(7 * WEEKS - 8, 7 * WEEKS);
    }

    private Worked work(MasteryPupil pupil, SplittableRandom chance) {
        MasteryTally tally = new MasteryTally(Manner.FRAME);
        Map<Move, Double> shifts = new EnumMap<>(Move.class);
        Rates rates = pupil.rates();
        for (int day = 0; day <= last; day++) {
            boolean rests = day / 7 % 4 == 3;
            for (Move move : Move.values()) {
                double shift = shifts.merge(move, change.of(rests, chance), Double::sum);
                rates = rates.with(move, pupil.factor(move) * Math.exp(shift));
            }
            for (int i = 0; i < EACH_DAY && !rests && day < last; i++) {
                note(tally, rates, day, chance);
            }
        }
        List<Unseen> unseen = new ArrayList<>();
        for (int i = 0; i < FORETOLD; i++) {
            List<Long> rows = PLAN.draw(chance);
            Column column = ColumnPlan.column(rows);
            OptionalLong written = ColumnPupil.writes(rows, Fate.by(rates, chance, Habit.NONE));
            boolean right =
                    written.isPresent()
                            && written.getAsLong() == column.answer().value().longValueExact();
            unseen.add(new Unseen(EventTable.of(column), right));
        }
        return new Worked(tally, pupil, shifts, unseen);
    }

    private static void note(MasteryTally tally, Rates rates, int day, SplittableRandom chance) {
        List<Long> rows = PLAN.draw(chance);
        Column column = ColumnPlan.column(rows);
        OptionalLong written = ColumnPupil.writes(rows, Fate.by(rates, chance, Habit.NONE));
        if (written.isPresent()) {
            Attempt attempt = Attempt.of(column, Long.toString(written.getAsLong()));
            StrandEvidence.of(EventTable.of(column), attempt, Rates.shipped())
                    .ifPresent(evidence ->
                            tally.add(new MasteryAnswer("column", evidence, OptionalLong.of(day))));
        }
    }

    /// The line for old answers that count `daily` times as much with every day.
    String line(double daily) {
        MasteryPopulation population = MasteryPopulation.shipped().with(new Forgetting(daily));
        List<PupilMastery> told =
                pupils.parallelStream()
                        .map(one -> one.tally().told(population, Demand.of(one.tally()), last))
                        .toList();
        Score in = new Score();
        double rank = 0;
        for (Move move : Move.values()) {
            double[] truly = new double[told.size()];
            double[] ours = new double[told.size()];
            for (int i = 0; i < truly.length; i++) {
                MoveMastery mastery =
                        told.get(i).moves().stream()
                                .filter(one -> one.move() == move)
                                .findFirst()
                                .orElseThrow();
                Worked worked = pupils.get(i);
                double shift = worked.shifts().getOrDefault(move, 0.0);
                truly[i] = truth.of(worked.pupil(), move) * Math.exp(shift);
                ours[i] = mastery.rate();
                in.note(mastery.low() <= truly[i] && truly[i] <= mastery.high());
            }
            rank += Ranks.correlation(truly, ours) / Move.values().length;
        }
        return String.format(
                Locale.ROOT,
                "| %s, day %d | %.3f | %.3f | %s | %.4f |",
                change.words,
                last,
                daily,
                rank,
                in.share(),
                loss(told));
    }

    /// The mean logarithmic loss of the answers that were not seen.
    private double loss(List<PupilMastery> told) {
        double sum = 0;
        for (int i = 0; i < told.size(); i++) {
            for (Unseen one : pupils.get(i).unseen()) {
                double right =
                        told.get(i).posterior().expect(one.table(), Rates.shipped()).chanceRight();
                sum -= Math.log(one.right() ? right : 1 - right);
            }
        }
        return sum / told.size() / FORETOLD;
    }
}
