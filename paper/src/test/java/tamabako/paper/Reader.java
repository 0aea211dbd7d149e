package tamabako.paper;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tamabako.paper.Pages.Line;

/// Reads sheets and keys as a person does, knowing nothing but the printed words.
final class Reader {

    private static final String NUMBER = "(?:\u2212 ?)?[¥$€£]?\\d{1,3}(?:,\\d{3})*(?:\\.\\d+)?";

    /// What is not worked on the frame says so beside its number.
    private static final String MODE = "(?: ?(?:mental|called|暗算|読上))?";

    private static final Pattern COLUMN = Pattern.compile("No\\. (\\d+)" + MODE);
    private static final Pattern ROW = Pattern.compile(NUMBER);
    private static final Pattern EXPRESSION =
            Pattern.compile(
                    "(\\d+)%2$s (?:(%1$s) ([×÷]) (%1$s)|([√∛]) ?(%1$s)) =(?: r| あまり)?"
                            .formatted(NUMBER, MODE));
    private static final Pattern ANSWER =
            Pattern.compile("(\\d+) (%1$s)(?: (?:r|あまり) ?(%1$s))?".formatted(NUMBER));

    private Reader() {}

    /// What a problem is, from its print.
    record Asked(String sign, List<BigDecimal> numbers) {}

    /// What the key says.
    record Told(String value, String remainder) {}

    /// The problems of a sheet by their numbers.
    static Map<String, Asked> sheet(Pages pages) {
        Map<String, Asked> problems = new LinkedHashMap<>();
        for (List<Line> page : pages.pages()) {
            for (int i = 0; i < page.size(); i++) {
                Matcher column = COLUMN.matcher(page.get(i).text());
                if (column.matches()) {
                    List<BigDecimal> rows =
                            rows(page, i + 1).stream().map(row -> value(row.text())).toList();
                    problems.put(column.group(1), new Asked("+", rows));
                }
            }
            Matcher expression =
                    EXPRESSION.matcher(
                            page.stream().map(Line::text).collect(Collectors.joining(" ")));
            while (expression.find()) {
                problems.put(expression.group(1), asked(expression));
            }
        }
        return problems;
    }

    /// The answers of a key by their numbers.
    static Map<String, Told> key(Pages pages) {
        Map<String, Told> answers = new LinkedHashMap<>();
        for (List<String> page : pages.text()) {
            for (String line : page) {
                String rest = line;
                for (Matcher m = ANSWER.matcher(rest); m.lookingAt(); m = ANSWER.matcher(rest)) {
                    String remainder = m.group(3) == null ? "" : m.group(3);
                    answers.put(m.group(1), new Told(m.group(2), remainder));
                    rest = rest.substring(m.end()).strip();
                }
            }
        }
        return answers;
    }

    /// The value of a printed number.
    static BigDecimal value(String printed) {
        return new BigDecimal(printed.replaceAll("[,¥$€£ ]", "").replace('\u2212', '-'));
    }

    /// The rows that follow the number of a column.
    static List<Line> rows(List<Line> page, int first) {
        List<Line> rows = new ArrayList<>();
        for (int i = first; i < page.size() && ROW.matcher(page.get(i).text()).matches(); i++) {
            rows.add(page.get(i));
        }
        return rows;
    }

    private static Asked asked(Matcher expression) {
        return expression.group(3) != null
                ? new Asked(
                        expression.group(3),
                        List.of(value(expression.group(2)), value(expression.group(4))))
                : new Asked(expression.group(5), List.of(value(expression.group(6))));
    }
}
