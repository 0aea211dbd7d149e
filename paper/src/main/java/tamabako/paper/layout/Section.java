package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.Problem;
import tamabako.problems.Root;

/// Problems that stand under one heading: of one kind, or of several that alternate.
record Section(List<Numbered> problems) {

    /// A sheet whose kinds alternate changes them, on average, before so many problems: a row of
    /// columns.
    private static final int ROW = 5;

    /// What problems under one heading share.
    private record Sort(Telling telling, Mode mode, String kind) {

        static Sort of(Numbered numbered) {
            Telling telling = Telling.of(numbered.problem());
            String kind = telling == Telling.STORY ? "" : numbered.problem().kind();
            return new Sort(telling, numbered.problem().terms().mode(), kind);
        }
    }

    Section {
        problems = List.copyOf(problems);
    }

    /// Divides a sheet into sections, in its order. Plain numbers and amounts may each have a rule
    /// of their own for the answers; a second rule begins a new section. Where sections would come
    /// back (a kind, then another section, then the kind again, and fewer than five problems in
    /// each on average), all of the sheet is one section.
    static List<Section> of(List<Numbered> problems) {
        List<Section> sections = divide(problems, true);
        boolean alternate = comeBack(sections) && problems.size() < ROW * sections.size();
        return alternate ? List.of(new Section(problems)) : sections;
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
            boolean other = !open.isEmpty() && !Sort.of(open.getFirst()).equals(Sort.of(next));
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

    /// Whether it has problems of several kinds.
    boolean isMixed() {
        return problems.stream().map(Sort::of).distinct().limit(2).count() > 1;
    }

    /// How all its problems reach the pupil; empty where they differ in it.
    Optional<Mode> mode() {
        List<Mode> modes =
                problems.stream()
                        .map(each -> each.problem().terms().mode())
                        .distinct()
                        .limit(2)
                        .toList();
        return modes.size() == 1 ? Optional.of(modes.getFirst()) : Optional.empty();
    }

    /// Those of its problems that are told in this way.
    List<Numbered> told(Telling telling) {
        return problems.stream().filter(each -> Telling.of(each.problem()) == telling).toList();
    }

    /// How the numbers of all its problems are told, where it is not mixed.
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
        if (isMixed()) {
            return "mixed." + mode().orElse(Mode.FRAME).word();
        }
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

    /// Whether a kind is there, then another section, then the kind again.
    private static boolean comeBack(List<Section> sections) {
        Set<String> before = new HashSet<>();
        for (int i = 2; i < sections.size(); i++) {
            before.add(sections.get(i - 2).kind());
            if (before.contains(sections.get(i).kind())) {
                return true;
            }
        }
        return false;
    }

    private String kind() {
        return telling() + Sort.of(problems.getFirst()).kind();
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

    /// Stories of one section ask for sums of many kinds, each with its own rule.
    private static boolean breaks(Map<Boolean, AnswerRule> rules, Numbered next) {
        AnswerRule own = AnswerRule.of(next.problem());
        return Telling.of(next.problem()) != Telling.STORY
                && !rules.getOrDefault(isAmount(next.problem()), own).equals(own);
    }
}
