package tamabako.bench.insight;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import tamabako.insight.mastery.Demand;
import tamabako.insight.mastery.Forgetting;
import tamabako.insight.mastery.MasteryPopulation;
import tamabako.insight.mastery.MoveMastery;
import tamabako.insight.mastery.PupilMastery;
import tamabako.insight.mastery.Spread;
import tamabako.insight.mastery.Statement;
import tamabako.insight.slip.Move;

/// Pupils of whom it is known how often they slip in each move: how well that is told after so many
/// problems.
final class MasteryTrial {

    private static final Move[] MOVES = Move.values();

    private final ColumnPlan plan;
    private final int problems;
    private final Spread spread;
    private final TrueRates truth;
    private final List<MovesMade> pupils = new ArrayList<>();

    /// Lets so many pupils work so many columns each.
    ///
    /// @param kindsOfTheHand see [MasteryPupil#draw]
    MasteryTrial(
            ColumnPlan plan,
            Spread spread,
            double kindsOfTheHand,
            int count,
            int problems,
            SplittableRandom chance) {
        this.plan = plan;
        this.problems = problems;
        this.spread = spread;
        this.truth = new TrueRates(plan, chance.split());
        List<SplittableRandom> chances = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            pupils.add(new MovesMade(MasteryPupil.draw(spread, kindsOfTheHand, chance)));
            chances.add(chance.split());
        }
        IntStream.range(0, count)
                .parallel()
                .forEach(i -> pupils.get(i).work(plan, problems, chances.get(i)));
    }

    /// The population as it is learned from these pupils alone.
    MasteryPopulation learned() {
        return MasteryPopulation.shipped()
                .with(Forgetting.NONE)
                .learnedFrom(pupils.stream().map(MovesMade::tally).toList());
    }

    /// The line of our judgement under `population`.
    String ours(String name, MasteryPopulation population) {
        MasteryPopulation lasting = population.with(Forgetting.NONE);
        long before = System.nanoTime();
        List<PupilMastery> told =
                pupils.stream()
                        .map(pupil -> pupil.tally().told(lasting, Demand.of(pupil.tally())))
                        .toList();
        double millis = (System.nanoTime() - before) / 1e6 / pupils.size();
        return ranked(
                        name,
                        (i, move) -> {
                            MoveMastery of = of(told.get(i), move);
                            return of.rate() / of.usual();
                        })
                + judged(told)
                + " %.2f ms |".formatted(millis);
    }

    /// The lines of what right and wrong alone tell, and of what the true slips would tell.
    List<String> baselines() {
        double shape = 1 / Math.expm1(spread.move() * spread.move());
        return List.of(
                ranked("right and wrong", (i, move) -> pupils.get(i).shareOfWrong(move))
                        + " | | | |",
                ranked("true slips", (i, move) -> pupils.get(i).labelled(move, shape))
                        + " | | | |");
    }

    private static MoveMastery of(PupilMastery told, Move move) {
        return told.moves().stream().filter(of -> of.move() == move).findFirst().orElseThrow();
    }

    private String ranked(String name, ToDoubleBiFunction<Integer, Move> estimate) {
        double rank = 0;
        for (Move move : MOVES) {
            double[] truly =
                    pupils.stream().mapToDouble(one -> truth.of(one.pupil(), move)).toArray();
            double[] told =
                    IntStream.range(0, pupils.size())
                            .mapToDouble(i -> estimate.applyAsDouble(i, move))
                            .toArray();
            rank += Ranks.correlation(truly, told) / MOVES.length;
        }
        Score weakest = new Score();
        for (int i = 0; i < pupils.size(); i++) {
            int pupil = i;
            Move truly = most(pupils.get(i).pupil()::factor);
            weakest.note(truly == most(move -> estimate.applyAsDouble(pupil, move)));
        }
        return "| %s | %d | %s | %.3f | %s |"
                .formatted(plan, problems, name, rank, weakest.share());
    }

    private static Move most(ToDoubleFunction<Move> of) {
        return Arrays.stream(MOVES).max(Comparator.comparingDouble(of)).orElseThrow();
    }

    private String judged(List<PupilMastery> told) {
        Score in = new Score();
        Score said = new Score();
        Score right = new Score();
        for (int i = 0; i < pupils.size(); i++) {
            for (Move move : MOVES) {
                MoveMastery mastery = of(told.get(i), move);
                double truly = truth.of(pupils.get(i).pupil(), move);
                in.note(mastery.low() <= truly && truly <= mastery.high());
                boolean says = mastery.statement() != Statement.NEEDS_EVIDENCE;
                said.note(says);
                if (says) {
                    boolean good = mastery.statement() == Statement.MASTERED;
                    right.note(good == truly < mastery.mark());
                }
            }
        }
        return " %s | %s | %s |".formatted(in.share(), said.share(), right.share());
    }

    static String head() {
        return "| columns | problems | judged by | rank correlation | weakest named | intervals hold"
                + " | said | right where said | a pupil |";
    }
}
