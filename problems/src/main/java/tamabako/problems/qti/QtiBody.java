package tamabako.problems.qti;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tamabako.frame.Rounding;
import tamabako.problems.Column;
import tamabako.problems.PadLine;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Story;
import tamabako.problems.words.ProblemWords;

/// What an item shows: the sum, or the story that asks for it, and a field for the answer.
final class QtiBody {

    /// The field for the answer is as wide as the longest written answer, and a little more.
    private static final int SPARE = 4;

    private QtiBody() {}

    static void write(XmlText xml, Problem problem, Locale locale) {
        Optional<Story> story =
                problem.terms().told().filter(Story.class::isInstance).map(Story.class::cast);
        ProblemWords words = ProblemWords.of(locale);
        for (String line : story.map(s -> s.in(locale).lines().toList()).orElse(List.of())) {
            xml.leaf("p", line);
        }
        for (String line : terms(problem, words)) {
            xml.leaf("p", line);
        }
        if (story.isEmpty() && problem instanceof Column column) {
            xml.leaf("pre", rows(column.rows()));
        }
        xml.open("p").text(story.isEmpty() ? sum(problem) + "= " : "= ");
        xml.open("qti-text-entry-interaction")
                .with("response-identifier", "RESPONSE")
                .with("expected-length", Integer.toString(width(problem)))
                .close()
                .close();
    }

    /// How the answer is asked for, a sentence a line.
    private static List<String> terms(Problem problem, ProblemWords words) {
        List<String> lines = new ArrayList<>();
        if (problem.terms().told().orElse(null) instanceof PadLine pad) {
            lines.add(
                    words.say(
                            "asked.pad",
                            Map.of(
                                    "line", pad.line(),
                                    "first", pad.firstLeaf(),
                                    "last", pad.lastLeaf())));
        }
        problem.terms()
                .unit()
                .ifPresent(unit -> lines.add(words.say("asked.unit", Map.of("unit", unit))));
        problem.terms()
                .places()
                .ifPresent(places ->
                        lines.add(
                                words.say(
                                        problem.rounding() == Rounding.HALF_UP
                                                ? "asked.half-up"
                                                : "asked.down",
                                        Map.of("places", places))));
        if (problem instanceof Quotient && problem.answer().remainder().isPresent()) {
            lines.add(words.say("asked.remainder", Map.of()));
        }
        return lines;
    }

    /// The rows one below the other, their unit places in line, as a column is written on paper.
    private static String rows(List<BigDecimal> rows) {
        int places = rows.stream().mapToInt(QtiBody::behindThePoint).max().orElse(0);
        List<String> lines = new ArrayList<>();
        for (BigDecimal row : rows) {
            String sign = row.signum() < 0 ? "− " : "";
            lines.add(sign + row.abs().toPlainString() + " ".repeat(places - behindThePoint(row)));
        }
        int width = lines.stream().mapToInt(String::length).max().orElse(0);
        return String.join(
                "\n",
                lines.stream().map(line -> " ".repeat(width - line.length()) + line).toList());
    }

    /// The point and the decimals.
    private static int behindThePoint(BigDecimal number) {
        return number.scale() > 0 ? number.scale() + 1 : 0;
    }

    private static String sum(Problem problem) {
        return switch (problem) {
            case Column _ -> "";
            case Product product ->
                    plain(product.multiplicand()) + " × " + plain(product.multiplier()) + " ";
            case Quotient quotient ->
                    plain(quotient.dividend()) + " ÷ " + plain(quotient.divisor()) + " ";
            case Root root -> (root.degree() == 2 ? "√" : "∛") + plain(root.of()) + " ";
        };
    }

    private static String plain(BigDecimal number) {
        return number.toPlainString();
    }

    private static int width(Problem problem) {
        return QtiAnswers.of(problem).stream().mapToInt(String::length).max().orElse(0) + SPARE;
    }
}
