package tamabako.problems.csv;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tamabako.problems.Answer;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.text.ProblemText;

/// One problem as the cells of a line, by the names of their columns.
final class CsvCells {

    /// Columns whose cell is the value of the JSON key of the same name.
    private static final List<String> PLAIN =
            List.of("id", "kind", "degree", "unit", "places", "rounding", "points", "mode");

    /// The keys that stand as one JSON object in the column `told`.
    private static final List<String> TOLD = List.of("pad", "story", "earlier");

    /// What is written for people and passed over when it is read.
    private static final List<String> FOR_PEOPLE = List.of("answer", "remainder");

    private static final List<String> KNOWN =
            Stream.of(PLAIN, List.of("told", "sum", "1", "2", "3"), FOR_PEOPLE)
                    .flatMap(List::stream)
                    .toList();

    private CsvCells() {}

    /// The columns as they are named in the first line.
    ///
    /// @throws Unreadable if a name is not known or stands twice
    static List<String> columns(List<String> first) {
        List<String> columns = first.stream().map(String::strip).toList();
        Set<String> seen = new HashSet<>();
        for (String column : columns) {
            if (column.isEmpty() || column.startsWith("#")) {
                continue;
            }
            if (!KNOWN.contains(column) && !isNumber(column)) {
                throw new Unreadable(new Reason.UnknownColumn(Unreadable.shown(column), KNOWN));
            }
            if (!seen.add(column)) {
                throw new Unreadable(new Reason.KeyTwice(column));
            }
        }
        return columns;
    }

    private static boolean isNumber(String column) {
        return column.matches("[1-9]\\d{0,3}") && Integer.parseInt(column) <= Column.MOST_ROWS;
    }

    /// The cells of a line that are not blank.
    static Map<String, String> named(List<String> columns, CsvRecord line) {
        Map<String, String> cells = new HashMap<>();
        for (int i = 0; i < line.getFieldCount(); i++) {
            String cell = line.getField(i).strip();
            String column = i < columns.size() ? columns.get(i) : "";
            if (!cell.isEmpty() && !column.startsWith("#")) {
                cells.merge(column, cell, (first, _) -> first);
            }
        }
        return cells;
    }

    /// The problem in those cells.
    ///
    /// @throws Unreadable if they hold none
    static Problem problem(Map<String, String> cells) {
        if (cells.containsKey("")) {
            throw new Unreadable(new Reason.CellOutside(Unreadable.shown(cells.get(""))));
        }
        ObjectNode node =
                cells.containsKey("sum")
                        ? ProblemJson.write(ProblemText.parse(cells.get("sum")))
                        : JsonNodeFactory.instance.objectNode();
        for (String column : PLAIN) {
            if (cells.containsKey(column)) {
                node.put(column, cells.get(column));
            }
        }
        if (cells.containsKey("told")) {
            node.setAll(told(cells.get("told")));
        }
        numbers(cells, node);
        return ProblemJson.read(node);
    }

    private static ObjectNode told(String cell) {
        JsonNode read = ProblemJson.tree(cell);
        if (!(read instanceof ObjectNode told)) {
            throw new Unreadable("told", new Reason.NotAnObject(Unreadable.shown(cell)));
        }
        told.fieldNames()
                .forEachRemaining(key -> {
                    if (!TOLD.contains(key)) {
                        throw new Unreadable(
                                "told", new Reason.UnknownKey(Unreadable.shown(key), TOLD));
                    }
                });
        return told;
    }

    /// Puts the numbered cells where the kind of problem has its numbers.
    private static void numbers(Map<String, String> cells, ObjectNode node) {
        List<Integer> places =
                cells.keySet().stream()
                        .filter(CsvCells::isNumber)
                        .map(Integer::valueOf)
                        .sorted()
                        .toList();
        if (places.isEmpty()) {
            return;
        }
        ArrayNode numbers = JsonNodeFactory.instance.arrayNode();
        IntStream.rangeClosed(1, places.getLast())
                .forEach(place -> numbers.add(cells.getOrDefault("" + place, "")));
        switch (node.path("kind").asText()) {
            case "product" -> node.set("factors", numbers);
            case "quotient" -> {
                atMost(2, numbers);
                node.set("dividend", numbers.get(0));
                if (numbers.size() == 2) {
                    node.set("divisor", numbers.get(1));
                }
            }
            case "root" -> {
                atMost(1, numbers);
                node.set("of", numbers.get(0));
            }
            default -> node.set("rows", numbers);
        }
    }

    private static void atMost(int most, ArrayNode numbers) {
        if (numbers.size() > most) {
            throw new Unreadable(new Reason.TooManyNumbers(numbers.size(), most));
        }
    }

    /// The cells of a problem, its right answer among them.
    static Map<String, String> of(Problem problem) {
        ObjectNode node = ProblemJson.write(problem);
        Map<String, String> cells = new LinkedHashMap<>();
        PLAIN.stream()
                .filter(node::has)
                .forEach(column -> cells.put(column, node.get(column).asText()));
        ObjectNode told = node.deepCopy().retain(TOLD);
        if (!told.isEmpty()) {
            cells.put("told", told.toString());
        }
        Stream.of("rows", "factors", "dividend", "divisor", "of")
                .filter(node::has)
                .flatMap(key -> values(node.get(key)))
                .forEach(number -> cells.put(nextNumber(cells), number));
        Answer answer = problem.answer();
        cells.put("answer", answer.figures());
        answer.remainder().ifPresent(left -> cells.put("remainder", left.toPlainString()));
        return cells;
    }

    private static Stream<String> values(JsonNode node) {
        return node instanceof ArrayNode list
                ? list.valueStream().map(JsonNode::asText)
                : Stream.of(node.asText());
    }

    private static String nextNumber(Map<String, String> cells) {
        return Long.toString(cells.keySet().stream().filter(CsvCells::isNumber).count() + 1);
    }

    /// The columns that some line has a cell in, in their usual order.
    static List<String> used(List<Map<String, String>> lines) {
        Set<String> used = new HashSet<>();
        lines.forEach(line -> used.addAll(line.keySet()));
        List<String> columns = new ArrayList<>(List.of("id", "kind"));
        Stream.concat(PLAIN.stream().skip(2), Stream.of("told"))
                .filter(used::contains)
                .forEach(columns::add);
        used.stream()
                .filter(CsvCells::isNumber)
                .map(Integer::valueOf)
                .sorted()
                .forEach(number -> columns.add(number.toString()));
        FOR_PEOPLE.stream().filter(used::contains).forEach(columns::add);
        return columns;
    }
}
