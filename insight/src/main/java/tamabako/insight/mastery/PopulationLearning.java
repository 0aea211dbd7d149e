package tamabako.insight.mastery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.SlipKind;
import tamabako.insight.slip.Strand;

/// Learns how pupils in general slip from the answers of many, by the EM algorithm: every pupil is
/// fitted under the population, and the population follows from all of them.
final class PopulationLearning {

    /// How many pupils the spread from before is worth.
    private static final double BEFORE = 10;

    /// How many pupils the usual rates are worth: they are assumptions, and may be far off.
    private static final double USUAL_RATES = 2;

    private static final int ROUNDS = 25;

    /// So many tell enough: those with the most answers.
    private static final int MOST_PUPILS = 400;

    private static final int MOVES = Move.values().length;
    private static final int NONE_KNOWN = new Strand.OfKind(SlipKind.NONE_KNOWN).index();
    private static final double LEAST = 0.05;
    private static final double MOST = 1.2;

    private final MasteryPopulation before;
    private final List<MasteryTally> pupils;

    private PopulationLearning(MasteryPopulation before, List<MasteryTally> pupils) {
        this.before = before;
        this.pupils = pupils;
    }

    static MasteryPopulation learn(MasteryPopulation before, List<MasteryTally> pupils) {
        List<MasteryTally> told =
                pupils.stream()
                        .filter(pupil -> pupil.answers() > 0)
                        .sorted(Comparator.comparingInt(MasteryTally::answers).reversed())
                        .limit(MOST_PUPILS)
                        .toList();
        PopulationLearning learning = new PopulationLearning(before, told);
        MasteryPopulation population = before;
        for (int round = 0; round < ROUNDS && !told.isEmpty(); round++) {
            population = learning.next(population);
        }
        return population;
    }

    private MasteryPopulation next(MasteryPopulation population) {
        List<SlipPosterior> fits =
                pupils.parallelStream()
                        .map(pupil ->
                                new StrandFit(
                                                pupil.counted(
                                                        population.forgetting(), pupil.lastDay()),
                                                population)
                                        .fit())
                        .toList();
        double[] means = means(fits);
        Spread spread = spread(fits, means, population);
        return MasteryPopulation.of(means, spread, population.forgetting());
    }

    private double[] means(List<SlipPosterior> fits) {
        double[] means = new double[Strand.COUNT];
        List<Strand> strands = Strand.all();
        for (int i = 0; i < Strand.COUNT; i++) {
            double sum = USUAL_RATES * before.mean(i);
            double weight = USUAL_RATES;
            for (SlipPosterior fit : fits) {
                if (fit.expected(strands.get(i)) > 0) {
                    sum += fit.log(strands.get(i));
                    weight++;
                }
            }
            means[i] = sum / weight;
        }
        return means;
    }

    private Spread spread(List<SlipPosterior> fits, double[] means, MasteryPopulation last) {
        List<Strand> strands = Strand.all();
        Mean moves = new Mean();
        Mean twoMoves = new Mean();
        Mean kinds = new Mean();
        Mean twoKinds = new Mean();
        for (SlipPosterior fit : fits) {
            List<Strand> met =
                    new ArrayList<>(
                            strands.stream()
                                    .filter(strand -> strand.index() != NONE_KNOWN)
                                    .filter(strand -> fit.expected(strand) > 0)
                                    .toList());
            for (Strand one : met) {
                for (Strand other : met) {
                    boolean same = one.equals(other);
                    double doubt = fit.covariance(one, other);
                    double product =
                            (fit.log(one) - means[one.index()])
                                            * (fit.log(other) - means[other.index()])
                                    + (same ? Math.min(doubt, inGeneral(last, one)) : doubt);
                    boolean both = one.index() < MOVES && other.index() < MOVES;
                    if (both) {
                        (same ? moves : twoMoves).note(product);
                    } else {
                        (same ? kinds : twoKinds).note(product);
                    }
                }
            }
        }
        return spread(moves, twoMoves, kinds, twoKinds, fits.size(), last.spread());
    }

    private Spread spread(
            Mean moves, Mean twoMoves, Mean kinds, Mean twoKinds, int pupils, Spread last) {
        Spread usual = before.spread();
        double general = square(usual.general());
        double hand = square(usual.hand());
        double inAll = twoKinds.with(general, pupils);
        double inHand = twoMoves.with(general + hand, pupils);
        double ofMove = moves.with(general + hand + square(usual.move()), pupils);
        double ofKind = kinds.with(general + square(usual.kind()), pupils);
        return new Spread(
                further(last.general(), inAll),
                further(last.hand(), inHand - inAll),
                further(last.move(), ofMove - inHand),
                further(last.kind(), ofKind - inAll));
    }

    /// One pupil's answers never make it more doubtful than pupils in general are; what Laplace's
    /// way has beyond that would let the spread grow without end.
    private static double inGeneral(MasteryPopulation last, Strand strand) {
        return last.covariance(strand.index(), strand.index());
    }

    /// The way from the deviation of the last round to this round's variance, and once more: the
    /// algorithm goes the right way in small steps.
    private static double further(double last, double variance) {
        double round = Math.max(square(LEAST), variance);
        double further = Math.clamp(2 * round - square(last), round / 2, 2 * round);
        return Math.min(MOST, Math.sqrt(further));
    }

    private static double square(double number) {
        return number * number;
    }

    /// The mean of what was noted, and of what was held before.
    private static final class Mean {
        private double sum;
        private int count;

        void note(double number) {
            sum += number;
            count++;
        }

        double with(double held, int pupils) {
            return count == 0 ? held : (BEFORE * held + pupils * sum / count) / (BEFORE + pupils);
        }
    }
}
