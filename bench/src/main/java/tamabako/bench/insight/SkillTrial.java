package tamabako.bench.insight;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import tamabako.insight.mastery.Demand;
import tamabako.insight.mastery.Forgetting;
import tamabako.insight.mastery.MasteryAnswer;
import tamabako.insight.mastery.MasteryPopulation;
import tamabako.insight.mastery.MasteryTally;
import tamabako.insight.mastery.Skill;
import tamabako.insight.mastery.SkillMastery;
import tamabako.insight.mastery.Spread;
import tamabako.insight.mastery.Statement;
import tamabako.insight.pooling.Manner;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.Habit;
import tamabako.insight.simulation.ProductPupil;
import tamabako.insight.simulation.QuotientPupil;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.Strand;
import tamabako.problems.Attempt;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Terms;

/// Pupils who multiply and divide, of whom it is known how often they slip in each skill of it and
/// in each move: how well that is told after so many problems, half of them products.
final class SkillTrial {

    private final int problems;
    private final List<MasteryPupil> pupils = new ArrayList<>();
    private final List<MasteryTally> tallies;

    SkillTrial(Spread spread, int count, int problems, SplittableRandom chance) {
        this.problems = problems;
        List<SplittableRandom> chances = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            pupils.add(MasteryPupil.draw(spread, 0, chance));
            chances.add(chance.split());
        }
        this.tallies =
                IntStream.range(0, count)
                        .parallel()
                        .mapToObj(i -> worked(pupils.get(i), chances.get(i)))
                        .toList();
    }

    /// A problem to be worked, every other one a product.
    private record Work(long first, long second, boolean multiplied) {

        static Work draw(int number, SplittableRandom chance) {
            return new Work(
                    chance.nextLong(1_000, 10_000), chance.nextLong(100, 1_000), number % 2 == 0);
        }

        Problem problem() {
            BigDecimal by = BigDecimal.valueOf(second);
            return multiplied
                    ? new Product("1", BigDecimal.valueOf(first), by, Terms.PLAIN)
                    : new Quotient("1", BigDecimal.valueOf(first * second), by, Terms.PLAIN);
        }

        OptionalLong writes(Fate fate) {
            return multiplied
                    ? ProductPupil.writes(first, second, fate)
                    : QuotientPupil.writes(first * second, second, fate);
        }
    }

    private MasteryTally worked(MasteryPupil pupil, SplittableRandom chance) {
        MasteryTally tally = new MasteryTally(Manner.FRAME);
        for (int i = 0; i < problems; i++) {
            Fate fate = Fate.by(pupil.rates(), chance, Habit.NONE);
            Work work = Work.draw(i, chance);
            Problem problem = work.problem();
            OptionalLong written = work.writes(fate);
            if (written.isPresent()) {
                MasteryAnswer.of(
                                EventTable.of(problem),
                                Attempt.of(problem, Long.toString(written.getAsLong())))
                        .ifPresent(tally::add);
            }
        }
        return tally;
    }

    /// One line for each skill, and one for the moves together.
    List<String> lines() {
        MasteryPopulation population =
                MasteryPopulation.shipped().with(Forgetting.NONE).learnedFrom(tallies);
        List<List<SkillMastery>> skills =
                tallies.stream().map(one -> one.told(population, Demand.of(one)).skills()).toList();
        List<String> lines = new ArrayList<>();
        for (Skill skill : Skill.values()) {
            lines.add(line(skill, skills));
        }
        lines.add(moves(population));
        return lines;
    }

    private String line(Skill skill, List<List<SkillMastery>> told) {
        Score in = new Score();
        Score said = new Score();
        Score right = new Score();
        double[] truly = pupils.stream().mapToDouble(one -> one.rates().of(skill.slip())).toArray();
        double[] ours = new double[truly.length];
        for (int i = 0; i < truly.length; i++) {
            SkillMastery mastery =
                    told.get(i).stream()
                            .filter(one -> one.skill() == skill)
                            .findFirst()
                            .orElseThrow();
            ours[i] = mastery.rate();
            in.note(mastery.low() <= truly[i] && truly[i] <= mastery.high());
            boolean says = mastery.statement() != Statement.NEEDS_EVIDENCE;
            said.note(says);
            if (says) {
                right.note(
                        (mastery.statement() == Statement.MASTERED) == truly[i] < mastery.mark());
            }
        }
        return "| %d | %s | %.3f | %s | %s, %s |"
                .formatted(
                        problems,
                        skill.word(),
                        Ranks.correlation(truly, ours),
                        in.share(),
                        said.share(),
                        right.asked() == 0 ? "–" : right.share());
    }

    /// The moves, by how many times as often as usual.
    private String moves(MasteryPopulation population) {
        double rank = 0;
        Score in = new Score();
        var told = tallies.stream().map(one -> one.told(population, Demand.of(one))).toList();
        for (Move move : Move.values()) {
            double[] truly = pupils.stream().mapToDouble(one -> one.factor(move)).toArray();
            double[] ours = new double[truly.length];
            for (int i = 0; i < truly.length; i++) {
                var mastery =
                        told.get(i).moves().stream()
                                .filter(one -> one.move() == move)
                                .findFirst()
                                .orElseThrow();
                double usual = mastery.usual() / Math.exp(population.mean(strand(move)));
                ours[i] = mastery.rate();
                in.note(mastery.low() <= truly[i] * usual && truly[i] * usual <= mastery.high());
            }
            rank += Ranks.correlation(truly, ours) / Move.values().length;
        }
        return String.format(
                Locale.ROOT, "| %d | the nine moves | %.3f | %s | |", problems, rank, in.share());
    }

    private static Strand strand(Move move) {
        return new Strand.OfMove(move);
    }
}
