package tamabako.problems.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;

/// Reads and writes one problem as JSON. The format is told in docs/formats.md.
public final class ProblemJson {

    private static final List<String> KINDS = List.of("column", "product", "quotient", "root");

    private ProblemJson() {}

    /// The problem on one line.
    ///
    /// @throws Unreadable if it is not one
    public static Problem parse(String line) {
        return read(Lines.parse(line));
    }

    /// Any JSON value on one line, read as exactly as problems are.
    ///
    /// @throws Unreadable if it is none
    public static JsonNode tree(String line) {
        return Lines.parse(line);
    }

    /// The problem in a JSON object.
    ///
    /// @throws Unreadable if it is not one
    public static Problem read(JsonNode node) {
        Fields fields = Fields.of(node);
        JsonNode kind = fields.get("kind", "\"kind\":\"column\"");
        String id = fields.find("id", value -> Fields.textOf(value, "\"1\"")).orElse("");
        return switch (Fields.inside("kind", () -> word(kind))) {
            case "column" -> column(id, fields);
            case "product" -> product(id, fields);
            case "quotient" -> quotient(id, fields);
            default -> root(id, fields);
        };
    }

    /// One line of JSON, without its line end.
    public static String line(Problem problem) {
        return Lines.write(write(problem));
    }

    /// The problem as a JSON object: only what is set, always in the same order.
    public static ObjectNode write(Problem problem) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        if (!problem.id().isEmpty()) {
            node.put("id", problem.id());
        }
        node.put("kind", problem.kind());
        switch (problem) {
            case Column column -> numbers(node.putArray("rows"), column.rows());
            case Product product ->
                    numbers(
                            node.putArray("factors"),
                            List.of(product.multiplicand(), product.multiplier()));
            case Quotient quotient ->
                    node.put("dividend", quotient.dividend().toPlainString())
                            .put("divisor", quotient.divisor().toPlainString());
            case Root root ->
                    node.put("degree", root.degree()).put("of", root.of().toPlainString());
        }
        TermsJson.write(problem.terms(), node);
        return node;
    }

    private static Problem column(String id, Fields fields) {
        allow(fields, "rows");
        List<BigDecimal> rows = fields.numbers("rows", "\"rows\":[\"54\",\"-29\",\"38\"]");
        if (rows.isEmpty()) {
            throw new Unreadable("rows", new Reason.NoRows());
        }
        if (rows.size() > Column.MOST_ROWS) {
            throw new Unreadable("rows", new Reason.TooManyRows(rows.size(), Column.MOST_ROWS));
        }
        return new Column(id, rows, TermsJson.read(fields));
    }

    private static Problem product(String id, Fields fields) {
        allow(fields, "factors");
        List<BigDecimal> factors = fields.numbers("factors", "\"factors\":[\"306\",\"4\"]");
        if (factors.size() != 2) {
            throw new Unreadable("factors", new Reason.NotTwoFactors(factors.size()));
        }
        return new Product(id, factors.getFirst(), factors.getLast(), TermsJson.read(fields));
    }

    private static Problem quotient(String id, Fields fields) {
        allow(fields, "dividend", "divisor");
        BigDecimal dividend = fields.number("dividend", "\"dividend\":\"1225\"");
        BigDecimal divisor = fields.number("divisor", "\"divisor\":\"35\"");
        if (divisor.signum() == 0) {
            throw new Unreadable("divisor", new Reason.ZeroDivisor(dividend.toPlainString()));
        }
        return new Quotient(id, dividend, divisor, TermsJson.read(fields));
    }

    private static Problem root(String id, Fields fields) {
        allow(fields, "degree", "of");
        fields.get("degree", "\"degree\":2");
        int degree = fields.whole("degree", 2, 3).orElseThrow();
        BigDecimal of = fields.number("of", "\"of\":\"729\"");
        if (of.signum() < 0) {
            throw new Unreadable("of", new Reason.NegativeRadicand(of.toPlainString()));
        }
        return new Root(id, degree, of, TermsJson.read(fields));
    }

    private static String word(JsonNode kind) {
        if (!kind.isTextual() || !KINDS.contains(kind.textValue())) {
            throw new Unreadable(new Reason.UnknownWord(Fields.shown(kind), KINDS));
        }
        return kind.textValue();
    }

    private static void allow(Fields fields, String... own) {
        fields.allow(
                Stream.of(Stream.of("id", "kind"), Stream.of(own), TermsJson.KEYS.stream())
                        .flatMap(keys -> keys)
                        .toList());
    }

    private static void numbers(ArrayNode list, List<BigDecimal> numbers) {
        numbers.forEach(number -> list.add(number.toPlainString()));
    }
}
