package tamabako.problems.story;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.nodes.Node;
import tamabako.problems.Terms;
import tamabako.problems.story.UnreadableStory.Fault;

/// Reads one template.
final class TemplateReader {

    private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";
    private static final Pattern RANGE =
            Pattern.compile(NUMBER + "\\.\\." + NUMBER + "(?: step " + NUMBER + ")?");
    private static final Pattern CHOICE = Pattern.compile("one of (.+)");
    private static final Pattern CONDITION = Pattern.compile("(.+?) (<|<=|!=) (.+)");
    private static final Pattern SUM =
            Pattern.compile("(?:([a-z]+) = )?(.+?)(?: (yen)| to ([1-6]))?");
    private static final Pattern NAME = Pattern.compile("[a-z]+");
    private static final List<String> KEYS =
            List.of("story", "grade", "given", "where", "sums", "en", "ja");

    private final Keys keys;
    private final List<StoryTemplate> before;
    private final Map<String, Given> given = new LinkedHashMap<>();
    private final Set<String> known = new TreeSet<>();

    TemplateReader(Node node, List<StoryTemplate> before) {
        this.keys = new Keys(node, KEYS);
        this.before = before;
    }

    StoryTemplate read() {
        String name = name();
        int grade = grade();
        Keys numbers = new Keys(keys.node("given", "given: {price: 60..180 step 10}"), List.of());
        for (String number : numbers.keys()) {
            Node node = numbers.node(number, "");
            if (!NAME.matcher(number).matches()) {
                throw Keys.at(node, new Fault.NotAName(number));
            }
            given.put(number, given(node));
            known.add(number);
        }
        List<Condition> conditions = keys.maybe("where").stream().map(this::condition).toList();
        List<StoryText> texts = Stream.of("en", "ja").map(this::text).toList();
        return new StoryTemplate(name, grade, given, conditions, sums(), texts);
    }

    private String name() {
        String name = keys.text("story", "story: discount");
        if (before.stream().anyMatch(template -> template.name().equals(name))) {
            throw Keys.at(keys.node("story", ""), new Fault.NotAName(name));
        }
        return name;
    }

    private int grade() {
        String shown = keys.text("grade", "grade: 3");
        if (!shown.matches("[1-6]")) {
            throw Keys.at(keys.node("grade", ""), new Fault.NotAGrade(shown));
        }
        return Integer.parseInt(shown);
    }

    private Given given(Node node) {
        String shown = Keys.one(node);
        Matcher range = RANGE.matcher(shown);
        if (range.matches()) {
            BigDecimal step = new BigDecimal(range.group(3) == null ? "1" : range.group(3));
            BigDecimal least = new BigDecimal(range.group(1));
            BigDecimal most = new BigDecimal(range.group(2));
            if (step.signum() > 0 && least.compareTo(most) <= 0) {
                return new Given.Range(least, most, step);
            }
        }
        Matcher choice = CHOICE.matcher(shown);
        if (choice.matches() && choice.group(1).matches(NUMBER + "(, " + NUMBER + ")*")) {
            return new Given.Choice(
                    Stream.of(choice.group(1).split(", ")).map(BigDecimal::new).toList());
        }
        return ExpressionReader.read(shown, known)
                .map(Given.Worked::new)
                .orElseThrow(() -> Keys.at(node, new Fault.NotGiven(shown)));
    }

    private Condition condition(Node node) {
        String shown = Keys.one(node);
        Fault fault = new Fault.NotACondition(shown, List.copyOf(known));
        Matcher parts = CONDITION.matcher(shown);
        if (!parts.matches()) {
            throw Keys.at(node, fault);
        }
        return new Condition(
                expression(parts.group(1), node, fault),
                parts.group(2),
                expression(parts.group(3), node, fault));
    }

    private Expression expression(String text, Node node, Fault fault) {
        return ExpressionReader.read(text, known).orElseThrow(() -> Keys.at(node, fault));
    }

    private StoryText text(String language) {
        StoryText text = new StoryText(language, keys.text(language, language + ": ..."));
        Set<String> unknown = new TreeSet<>(text.numbers());
        unknown.removeAll(known);
        if (!unknown.isEmpty() || text.hasLooseBrace()) {
            String shown = unknown.isEmpty() ? "{" : String.join(", ", unknown);
            throw Keys.at(
                    keys.node(language, ""), new Fault.UnknownBlank(shown, List.copyOf(known)));
        }
        return text;
    }

    private List<StorySum> sums() {
        List<Node> nodes = keys.list("sums", "sums: [price * count yen]");
        List<StorySum> sums = new ArrayList<>();
        for (Node node : nodes) {
            StorySum sum = sum(node, sums.size() == nodes.size() - 1);
            known.add(sum.name());
            sums.add(sum);
        }
        if (sums.isEmpty()) {
            throw keys.missing("sums", "sums: [price * count yen]");
        }
        return sums;
    }

    private StorySum sum(Node node, boolean last) {
        String shown = Keys.one(node);
        Fault fault = new Fault.NotASum(shown, List.copyOf(known));
        Matcher parts = SUM.matcher(shown);
        if (!parts.matches()
                || (parts.group(1) == null) != last
                || (!last && known.contains(parts.group(1)))) {
            throw Keys.at(node, fault);
        }
        String[] numbers = parts.group(2).split(" [-+*/] ");
        String signs = parts.group(2).replaceAll("[^-+*/]", "");
        if (numbers.length != signs.length() + 1 || !signs.matches("[*/]|[-+]+")) {
            throw Keys.at(node, fault);
        }
        List<Expression> operands =
                Stream.of(numbers).map(number -> expression(number, node, fault)).toList();
        return new StorySum(last ? "" : parts.group(1), signs, operands, terms(parts));
    }

    private static Terms terms(Matcher parts) {
        Terms plain = parts.group(3) == null ? Terms.PLAIN : Terms.PLAIN.withUnit("JPY");
        return parts.group(4) == null ? plain : plain.withPlaces(Integer.parseInt(parts.group(4)));
    }
}
