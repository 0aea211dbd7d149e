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

    /// What the model may be off in a skill, as a logarithm: how tables go wrong, and how many
    /// slips in a quotient are mended unseen, is assumed.
    private static final double OFF_IN_SKILLS = 0.2;

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
                hand ? skills() : List.of(),
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
        NeededProblems needed =
                new NeededProblems(
                        posterior, strand, prior, demand.times(), demand.expected(strand));
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

    private List<SkillMastery> skills() {
        return Arrays.stream(Skill.values())
                .filter(skill -> posterior.expected(new Strand.OfKind(skill.slip())) > 0)
                .map(this::skill)
                .toList();
    }

    private SkillMastery skill(Skill skill) {
        Strand strand = new Strand.OfKind(skill.slip());
        double each = tally.manner().shipped().of(skill.slip());
        double mark = demand.skillTimes();
        double deviation = Math.hypot(posterior.deviation(strand), OFF_IN_SKILLS);
        double off = (Math.log(mark) - posterior.log(strand)) / deviation;
        double doubt = Math.exp(NINE_IN_TEN * deviation);
        double good = new NormalDistribution().cumulativeProbability(off);
        double prior = population.covariance(strand.index(), strand.index());
        NeededProblems needed =
                new NeededProblems(posterior, strand, prior, mark, demand.expected(strand));
        Statement statement = Statement.of(good, needed.isEnough());
        return new SkillMastery(
                skill,
                (int) Math.round(expected(strand) / each),
                posterior.slips(strand),
                each * posterior.factor(strand),
                each * posterior.factor(strand) / doubt,
                each * posterior.factor(strand) * doubt,
                each * Math.exp(population.mean(strand)),
                each * mark,
                good,
                statement,
                statement == Statement.NEEDS_EVIDENCE ? needed.problems() : OptionalInt.empty());
    }

    /// How many slips were expected of a usual pupil, old answers counting as much as new ones.
    private double expected(Strand strand) {
        return days.stream().mapToDouble(counted -> counted.day().expected()[strand.index()]).sum();
    }

    /// How often a step of `move` goes wrong for a usual pupil, as the pupil has met it, or else as
    /// typical problems have it.
    private double perStep(Move move) {
        Strand strand = new Strand.OfMove(move);
        if (tally.steps(move) > 0) {
            return expected(strand) / tally.steps(move);
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
