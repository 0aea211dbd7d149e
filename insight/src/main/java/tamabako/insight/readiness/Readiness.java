package tamabako.insight.readiness;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Pass;

/// How ready one pupil is for one grade.
///
/// @param ladder the name of the ladder that the grade is of
/// @param grade the grade
/// @param pass the chance to pass, or to reach the lowest rank; empty where there is not enough
///   behind it
/// @param ranks the chance to reach each rank or a higher one, from the lowest up; empty where the
///   grade has none or nothing is told
/// @param next the rank that the pupil is to reach next: the lowest with a chance below one half;
///   empty where the grade has none or nothing is told
/// @param sections the sections that are sat, in the order of the paper; of those to choose from,
///   the best ones
/// @param helps what would raise the chance to pass, or to reach the next rank, most first; empty
///   where nothing is told
public record Readiness(
        String ladder,
        Grade grade,
        Optional<Chance> pass,
        List<RankChance> ranks,
        Optional<Pass.Rank> next,
        List<SectionReadiness> sections,
        List<Help> helps) {

    public Readiness {
        ranks = List.copyOf(ranks);
        sections = List.copyOf(sections);
        helps = List.copyOf(helps);
    }

    /// The chance to reach a rank or a higher one.
    public record RankChance(Pass.Rank rank, Chance chance) {}

    /// Whether there is enough behind it to tell a chance.
    public boolean isTold() {
        return pass.isPresent();
    }

    /// The section that limits the pupil most: the one in which the least chance is to reach what
    /// the paper asks for, or, where it asks for points in the whole only, in which most would be
    /// won. Empty where nothing is told.
    public Optional<SectionReadiness> limiting() {
        if (!isTold()) {
            return Optional.empty();
        }
        Optional<SectionReadiness> least =
                sections.stream()
                        .filter(section ->
                                section.told().flatMap(told -> told.enough()).isPresent())
                        .min(Comparator.comparingDouble(Readiness::enough));
        return least.isPresent()
                ? least
                : helps.stream()
                        .findFirst()
                        .flatMap(help ->
                                sections.stream()
                                        .filter(one -> one.field().equals(help.field()))
                                        .findFirst());
    }

    private static double enough(SectionReadiness section) {
        return section.told().flatMap(told -> told.enough()).map(Chance::likely).orElse(1.0);
    }

    /// About how many problems more are needed before a chance is told, in all sections together.
    public int more() {
        return sections.stream().mapToInt(section -> section.proof().more()).sum();
    }
}
