package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tamabako.paper.words.PrintWords;
import tamabako.problems.Problem;

/// What must be said of the answers of a section: nothing, one rule, one for plain numbers and one
/// for amounts, or several rules each for the numbers of its problems. A story says itself what is
/// to be written.
final class Notes {

    private Notes() {}

    static List<String> of(Section section, PrintWords words) {
        Map<Boolean, Map<AnswerRule, List<Numbered>>> byUnit = new LinkedHashMap<>();
        for (Numbered each : section.problems()) {
            if (Telling.of(each.problem()) == Telling.STORY) {
                continue;
            }
            byUnit.computeIfAbsent(Section.isAmount(each.problem()), _ -> new LinkedHashMap<>())
                    .computeIfAbsent(AnswerRule.of(each.problem()), _ -> new ArrayList<>())
                    .add(each);
        }
        boolean oneRuleEach = byUnit.values().stream().allMatch(rules -> rules.size() == 1);
        return Stream.of(false, true)
                .flatMap(unit -> byUnit.getOrDefault(unit, Map.of()).values().stream())
                .flatMap(some -> told(some, oneRuleEach, byUnit.size() > 1, words).stream())
                .toList();
    }

    private static Optional<String> told(
            List<Numbered> some, boolean oneRuleEach, boolean bothUnits, PrintWords words) {
        List<Problem> problems = some.stream().map(Numbered::problem).toList();
        Optional<String> rule = AnswerRule.told(problems, words);
        if (!oneRuleEach) {
            List<Numbered> told =
                    some.stream().filter(each -> AnswerRule.canMatter(each.problem())).toList();
            return rule.filter(_ -> !told.isEmpty())
                    .map(note -> words.say("note.numbers", numbers(told, words), note));
        }
        String key = Section.isAmount(problems.getFirst()) ? "note.unit" : "note.plain";
        return rule.map(note -> bothUnits ? words.say(key, note) : note);
    }

    /// The numbers of problems that follow one another as a range.
    private static String numbers(List<Numbered> some, PrintWords words) {
        List<String> labels = some.stream().map(Numbered::label).toList();
        List<Integer> places = new ArrayList<>();
        for (String label : labels) {
            if (!label.matches("\\d{1,4}")) {
                return String.join(words.say("list"), labels);
            }
            places.add(Integer.valueOf(label));
        }
        List<String> ranges = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= places.size(); i++) {
            if (i == places.size() || places.get(i) != places.get(i - 1) + 1) {
                String from = labels.get(first);
                boolean one = first == i - 1;
                ranges.add(one ? from : words.say("range", from, labels.get(i - 1)));
                first = i;
            }
        }
        return String.join(words.say("list"), ranges);
    }
}
