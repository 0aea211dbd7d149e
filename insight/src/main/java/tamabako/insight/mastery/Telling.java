package tamabako.insight.mastery;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.hipparchus.distribution.continuous.NormalDistribution;
import tamabako.insight.pooling.Manner;
import tamabako.insight.slip.Cell;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.Strand;
import tamabako.insight.slip.StrandEvidence;

/// Tells of one pupil's mastery.
final class Telling {

    /// Nine chances in ten lie within so many standard deviations.
    private static final double NINE_IN_TEN = 1.6448536269514722;

    private final MasteryTally tally;
    private final MasteryPopulation population;
    private final Demand demand;
    private final List<MasteryTally.Counted> days;
    private final SlipPosterior posterior;

    Telling(MasteryTally tally, MasteryPopulation population, Demand demand, long today) {
        this.tally = tally;
        this.population = population;
        this.demand = demand;
        this.days = tally.counted(population.forgetting(), today);
        this.posterior = new StrandFit(days, population).fit();
    }

    PupilMastery mastery() {
        boolean hand = tally.manner() == Manner.FRAME;
        return new PupilMastery(
                tally.manner(),
                tally.answers(),
                tally.wrong(),
                tally.notRead(),
                hand ? Arrays.stream(Move.values()).map(this::move).toList() : List.of(),
                kinds(),
                hand ? cells() : List.of(),
                posterior);
    }

    private MoveMastery move(Move move) {
        Strand strand = new Strand.OfMove(move);
        double perStep = perStep(move);
        double log = posterior.log(strand);
        double deviation = posterior.deviation(strand);
        double off = (Math.log(demand.times()) - log) / deviation;
        double good = new NormalDistribution().cumulativeProbability(off);
        double prior = population.covariance(strand.index(), strand.index());
        NeededProblems needed = new NeededProblems(posterior, strand, prior, demand);
        Statement statement = Statement.of(good, needed.isEnough());
        return new MoveMastery(
                move,
                tally.steps(move),
                posterior.slips(strand),
                perStep * posterior.factor(strand),
                perStep * posterior.factor(strand, -NINE_IN_TEN),
                perStep * posterior.factor(strand, NINE_IN_TEN),
                perStep * Math.exp(population.mean(strand)),
                perStep * demand.times(),
                good,
                statement,
                statement == Statement.NEEDS_EVIDENCE ? needed.problems() : OptionalInt.empty());
    }

    /// How often a step of `move` goes wrong for a usual pupil, as the pupil has met it, or else as
    /// typical problems have it.
    private double perStep(Move move) {
        Strand strand = new Strand.OfMove(move);
        if (tally.steps(move) > 0) {
            double expected = 0;
            for (MasteryTally.Counted counted : days) {
                expected += counted.day().expected()[strand.index()];
            }
            return expected / tally.steps(move);
        }
        return demand.steps(move) > 0 ? demand.expected(strand) / demand.steps(move) : 0;
    }

    private List<KindMastery> kinds() {
        Map<String, KindCount> kinds = new TreeMap<>();
        for (MasteryTally.Counted counted : days) {
            counted.day()
                    .rightAndWrong()
                    .forEach((kind, counts) ->
                            kinds.merge(
                                    kind,
                                    KindCount.of(counts[0], counts[1], counted.weight()),
                                    KindCount::plus));
        }
        List<KindMastery> told = new ArrayList<>();
        kinds.forEach((kind, count) -> told.add(count.told(kind)));
        return told;
    }

    private List<CellMastery> cells() {
        double[] slips = new double[Cell.COUNT];
        double[] factors = new double[Strand.COUNT];
        for (Strand strand : Strand.all()) {
            factors[strand.index()] = posterior.factor(strand);
        }
        for (MasteryTally.Counted counted : days) {
            for (StrandEvidence answer : counted.day().wrong()) {
                answer.addCells(factors, slips);
            }
        }
        return Cell.all().stream()
                .map(cell -> new CellMastery(cell, tally.steps(cell), slips[cell.index()]))
                .toList();
    }
}
