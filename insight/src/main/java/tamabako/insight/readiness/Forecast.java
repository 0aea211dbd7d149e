package tamabako.insight.readiness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tamabako.problems.grade.Pass;

/// Tells from a pupil's standing how ready the pupil is for a grade.
///
/// @param correction what was learned from earlier exams
public record Forecast(Recalibration correction) {

    /// A forecast that has learned from no exams.
    public static final Forecast PLAIN = new Forecast(Recalibration.NONE);

    /// How ready the pupil is for the grade of `outline`.
    public Readiness of(Standing standing, Outline outline) {
        List<Outline.Part> sat = sat(standing, outline);
        Sitting sitting = new Sitting(outline, sat, standing);
        List<Proof> proofs = sat.stream().map(part -> proof(standing, part, outline)).toList();
        if (!proofs.stream().allMatch(Proof::isEnough)) {
            return new Readiness(
                    outline.ladder(),
                    outline.grade(),
                    Optional.empty(),
                    List.of(),
                    Optional.empty(),
                    sections(sitting, sat, proofs, outline, 0),
                    List.of());
        }
        List<Chance> chances = chances(sitting);
        int next = next(chances);
        List<Readiness.RankChance> ranks = new ArrayList<>();
        if (outline.grade().pass() instanceof Pass.ByScore byScore) {
            for (int goal = 0; goal < chances.size(); goal++) {
                ranks.add(new Readiness.RankChance(byScore.ranks().get(goal), chances.get(goal)));
            }
        }
        return new Readiness(
                outline.ladder(),
                outline.grade(),
                Optional.of(chances.getFirst()),
                ranks,
                ranks.isEmpty() ? Optional.empty() : Optional.of(ranks.get(next).rank()),
                sections(sitting, sat, proofs, outline, next),
                sitting.helps(next).stream()
                        .sorted(Comparator.comparingDouble(Help::gain).reversed())
                        .toList());
    }

    /// The chances alone to pass, or to reach each rank or a higher one from the lowest up; none
    /// where there is not enough behind them.
    public List<Chance> chances(Standing standing, Outline outline) {
        List<Outline.Part> sat = sat(standing, outline);
        boolean enough =
                sat.stream().map(part -> proof(standing, part, outline)).allMatch(Proof::isEnough);
        return enough ? chances(new Sitting(outline, sat, standing)) : List.of();
    }

    private List<Chance> chances(Sitting sitting) {
        double[][] all = sitting.all();
        List<Chance> chances = new ArrayList<>();
        for (int goal = 0; goal < sitting.goals().count(); goal++) {
            int one = goal;
            double[] here = new double[all.length];
            Arrays.setAll(here, i -> all[i][one]);
            chances.add(correction.of(Chance.of(here)));
        }
        return chances;
    }

    /// The chance alone to pass, or to reach the lowest rank, whatever stands behind it.
    public double chance(Standing standing, Outline outline) {
        double[][] all = new Sitting(outline, sat(standing, outline), standing).all();
        double sum = 0;
        for (double[] one : all) {
            sum += one[0];
        }
        return correction.of(Math.clamp(sum / all.length, 0, 1));
    }

    /// The place of the goal that is to be reached next: the lowest with a chance below one half.
    static int next(List<Chance> chances) {
        for (int goal = 0; goal < chances.size(); goal++) {
            if (chances.get(goal).likely() < 0.5) {
                return goal;
            }
        }
        return chances.size() - 1;
    }

    private static Proof proof(Standing standing, Outline.Part part, Outline outline) {
        boolean clocked = outline.grade().time().or(() -> part.section().time()).isPresent();
        return Proof.of(standing, part, clocked);
    }

    private List<SectionReadiness> sections(
            Sitting sitting,
            List<Outline.Part> sat,
            List<Proof> proofs,
            Outline outline,
            int goal) {
        boolean whole = Sitting.isOfWhole(outline.grade().pass());
        List<SectionReadiness> sections = new ArrayList<>();
        for (int s = 0; s < sat.size(); s++) {
            Optional<SectionReadiness.Figures> told =
                    proofs.get(s).isEnough()
                            ? Optional.of(figures(sitting, s, goal, whole))
                            : Optional.empty();
            sections.add(
                    new SectionReadiness(
                            sat.get(s).section(), sat.get(s).field(), proofs.get(s), told));
        }
        return sections;
    }

    private static SectionReadiness.Figures figures(
            Sitting sitting, int section, int goal, boolean whole) {
        double[][] told = sitting.section(section, goal);
        double[] enough = new double[told.length];
        double points = 0;
        for (int i = 0; i < told.length; i++) {
            enough[i] = told[i][0];
            points += told[i][1] / told.length;
        }
        return new SectionReadiness.Figures(
                whole ? Optional.empty() : Optional.of(Chance.of(enough)),
                points,
                sitting.timeRunsOut(section));
    }

    /// The sections that are sat: of those to choose from, those with enough behind them first, and
    /// then those in which the largest part of the points is to be expected.
    private static List<Outline.Part> sat(Standing standing, Outline outline) {
        int choose = outline.grade().elective().map(elective -> elective.choose()).orElse(0);
        if (choose == 0) {
            return outline.parts().stream()
                    .filter(part -> outline.grade().isForAll(part.section()))
                    .toList();
        }
        List<Outline.Part> chosen =
                outline.parts().stream()
                        .filter(part -> !outline.grade().isForAll(part.section()))
                        .map(part ->
                                new Elective(
                                        part,
                                        proof(standing, part, outline).more(),
                                        expected(standing, part, outline)))
                        .sorted(
                                Comparator.comparingInt(Elective::more)
                                        .thenComparingDouble(one -> -one.expected()))
                        .limit(choose)
                        .map(Elective::part)
                        .toList();
        return outline.parts().stream()
                .filter(part -> outline.grade().isForAll(part.section()) || chosen.contains(part))
                .toList();
    }

    /// A section to choose, how much more is to be known of it, and which part of its points is to
    /// be expected.
    private record Elective(Outline.Part part, int more, double expected) {}

    private static double expected(Standing standing, Outline.Part part, Outline outline) {
        Sitting alone = new Sitting(outline, List.of(part), standing);
        double points = 0;
        double[][] told = alone.section(0, 0);
        for (double[] one : told) {
            points += one[1] / told.length;
        }
        return points / part.section().fullMarks();
    }
}
