package tamabako.problems.story;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tamabako.problems.Problem;
import tamabako.problems.Story;
import tamabako.problems.making.Rounded;
import tamabako.problems.making.draw.Draws;

/// A story whose numbers and names are open.
public final class StoryTemplate {

    private final String name;
    private final int grade;
    private final Map<String, Given> given;
    private final List<Condition> conditions;
    private final List<StorySum> sums;
    private final List<StoryText> texts;

    /// @param given how each number is found, in the order in which they are
    StoryTemplate(
            String name,
            int grade,
            Map<String, Given> given,
            List<Condition> conditions,
            List<StorySum> sums,
            List<StoryText> texts) {
        this.name = name;
        this.grade = grade;
        this.given = given;
        this.conditions = List.copyOf(conditions);
        this.sums = List.copyOf(sums);
        this.texts = List.copyOf(texts);
    }

    /// The name of the template, such as `discount`.
    public String name() {
        return name;
    }

    /// The grade that it is for, 6 to 1.
    public int grade() {
        return grade;
    }

    /// Numbers that fit, with the answers of the sums; empty where this try came to nothing.
    Optional<Map<String, BigDecimal>> draw(Draws draws) {
        Map<String, BigDecimal> values = new HashMap<>();
        given.forEach((number, how) -> values.put(number, how.draw(draws, values)));
        boolean fits = conditions.stream().allMatch(condition -> condition.holds(values));
        return fits && !hasTie(values) ? Optional.of(values) : Optional.empty();
    }

    /// Whether a sum comes out exactly between two rounded answers, which is never asked.
    private boolean hasTie(Map<String, BigDecimal> values) {
        return work(new HashMap<>(values)).stream()
                .anyMatch(problem -> Rounded.of(problem) == Rounded.TIE);
    }

    /// The sums worked in turn; their answers are put among those `known`.
    private List<Problem> work(Map<String, BigDecimal> known) {
        List<Problem> worked = new ArrayList<>();
        for (StorySum sum : sums) {
            Problem problem = sum.problem(known);
            known.put(sum.name(), problem.answer().value());
            worked.add(problem);
        }
        return worked;
    }

    /// The problem with these numbers, told with these names by language; the sums before the last
    /// are in its story.
    Problem tell(
            String id, Map<String, BigDecimal> values, Map<String, Map<String, String>> names) {
        Map<String, BigDecimal> known = new HashMap<>(values);
        List<Problem> worked = work(known);
        Map<String, String> told =
                texts.stream()
                        .collect(
                                Collectors.toMap(
                                        StoryText::language,
                                        text ->
                                                text.fill(
                                                        values,
                                                        names.getOrDefault(
                                                                text.language(), Map.of()))));
        Story story = new Story(told, worked.subList(0, worked.size() - 1));
        StorySum last = sums.getLast();
        return new StorySum("", last.signs(), last.numbers(), last.terms().withTold(story))
                .problem(known)
                .withId(id);
    }
}
