package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Root;
import tamabako.problems.Terms;

/// Problems of one kind that follow one another.
record Section(List<Numbered> problems) {

    Section {
        problems = List.copyOf(problems);
    }

    /// Divides a sheet into sections, in its order. Plain numbers and amounts may each have a rule
    /// of their own for the answers; a second rule begins a new section.
    static List<Section> of(List<Numbered> problems) {
        return divide(problems, true);
    }

    /// Divides a section of a paper where another kind of problem begins, whatever the rules for
    /// the answers.
    static List<Section> kinds(List<Numbered> problems) {
        return divide(problems, false);
    }

    private static List<Section> divide(List<Numbered> problems, boolean byRules) {
        List<Section> sections = new ArrayList<>();
        List<Numbered> open = new ArrayList<>();
        Map<Boolean, AnswerRule> rules = new LinkedHashMap<>();
        for (Numbered next : problems) {
            boolean other = !open.isEmpty() && !alike(open.getFirst(), next);
            if (other || (byRules && breaks(rules, next))) {
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

    /// How the numbers of all its problems are told.
    Telling telling() {
        return Telling.of(problems.getFirst().problem());
    }

    /// Whether the section has columns, which stand in blocks.
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
        return switch (telling()) {
            case PAD -> "pad";
            case STORY -> "story";
            case SUM -> first.kind() + degree() + "." + first.terms().mode().word();
        };
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

    /// Its problems where they turn from plain numbers to amounts or back: twenty products, ten of
    /// each, are two lists of ten.
    List<List<Numbered>> byUnit() {
        List<List<Numbered>> runs = new ArrayList<>();
        for (Numbered next : problems) {
            if (runs.isEmpty()
                    || isAmount(runs.getLast().getFirst().problem()) != isAmount(next.problem())) {
                runs.add(new ArrayList<>());
            }
            runs.getLast().add(next);
        }
        return runs;
    }

    static boolean isAmount(Problem problem) {
        return problem.terms().unit().isPresent();
    }

    private String degree() {
        List<Integer> degrees =
                problems.stream()
                        .map(Numbered::problem)
                        .filter(Root.class::isInstance)
                        .map(problem -> ((Root) problem).degree())
                        .distinct()
                        .toList();
        return degrees.size() == 1 ? degrees.getFirst().toString() : "";
    }

    private static boolean alike(Numbered first, Numbered next) {
        Terms terms = first.problem().terms();
        Telling telling = Telling.of(first.problem());
        return telling == Telling.of(next.problem())
                && terms.mode() == next.problem().terms().mode()
                && (telling == Telling.STORY
                        || first.problem().kind().equals(next.problem().kind()));
    }

    /// Stories of one section ask for sums of many kinds, each with its own rule.
    private static boolean breaks(Map<Boolean, AnswerRule> rules, Numbered next) {
        AnswerRule own = AnswerRule.of(next.problem());
        return Telling.of(next.problem()) != Telling.STORY
                && !rules.getOrDefault(isAmount(next.problem()), own).equals(own);
    }
}
