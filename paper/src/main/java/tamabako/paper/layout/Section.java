package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Root;
import tamabako.problems.Terms;

/// Problems of one kind that follow one another and are answered by the same rules.
record Section(List<Numbered> problems) {

    Section {
        problems = List.copyOf(problems);
    }

    /// Divides a sheet into sections, in its order.
    static List<Section> of(List<Numbered> problems) {
        List<Section> sections = new ArrayList<>();
        List<Numbered> open = new ArrayList<>();
        Map<Boolean, AnswerRule> rules = new HashMap<>();
        for (Numbered next : problems) {
            if (!open.isEmpty() && (!alike(open.getFirst(), next) || breaks(rules, next))) {
                sections.add(new Section(open));
                open.clear();
                rules.clear();
            }
            open.add(next);
            rules.put(isAmount(next.problem()), AnswerRule.of(next.problem()));
        }
        sections.add(new Section(open));
        return sections;
    }

    /// Whether the section has columns, which stand in blocks; all else stands in lists.
    boolean isOfColumns() {
        return problems.getFirst().problem() instanceof Column;
    }

    /// Whether some answer has something left over, so that there must be room for it.
    boolean hasRemainders() {
        return problems.stream().anyMatch(each -> AnswerRule.leavesRemainder(each.problem()));
    }

    /// The key of the words over the section.
    String heading() {
        Problem first = problems.getFirst().problem();
        List<Integer> degrees =
                problems.stream()
                        .map(Numbered::problem)
                        .filter(Root.class::isInstance)
                        .map(problem -> ((Root) problem).degree())
                        .distinct()
                        .toList();
        String degree = degrees.size() == 1 ? degrees.getFirst().toString() : "";
        return first.kind() + degree + "." + first.terms().mode().word();
    }

    /// The points of each problem, where all have the same.
    OptionalInt points() {
        List<OptionalInt> points =
                problems.stream()
                        .map(each -> each.problem().terms().points())
                        .distinct()
                        .limit(2)
                        .toList();
        return points.size() == 1 ? points.getFirst() : OptionalInt.empty();
    }

    /// The plain numbers (false) and the amounts (true) of the section.
    Map<Boolean, List<Problem>> byUnit() {
        return problems.stream()
                .map(Numbered::problem)
                .collect(Collectors.partitioningBy(Section::isAmount));
    }

    private static boolean alike(Numbered first, Numbered next) {
        Terms terms = first.problem().terms();
        return first.problem().kind().equals(next.problem().kind())
                && terms.mode() == next.problem().terms().mode();
    }

    private static boolean breaks(Map<Boolean, AnswerRule> rules, Numbered next) {
        AnswerRule own = AnswerRule.of(next.problem());
        return !rules.getOrDefault(isAmount(next.problem()), own).equals(own);
    }

    private static boolean isAmount(Problem problem) {
        return problem.terms().unit().isPresent();
    }
}
