package tamabako.problems.grade.file;

import java.util.SortedMap;
import java.util.TreeMap;
import org.snakeyaml.engine.v2.nodes.Node;
import tamabako.problems.grade.Lengths;
import tamabako.problems.grade.Span;

/// Reads how many rows a column has and how long they are.
final class LengthsReader {

    private static final int MOST_ROWS = 100;
    private static final int MOST_DIGITS = 16;

    private LengthsReader() {}

    static Lengths read(Fields place) {
        return place.there("lengths").map(node -> table(place, node)).orElseGet(() -> range(place));
    }

    private static Lengths range(Fields place) {
        int rows = place.whole("rows", 2, MOST_ROWS);
        Span digits = place.span("digits", 1, MOST_DIGITS);
        Span reach = new Span(rows * digits.least(), rows * digits.most());
        int ji = ji(place, rows, reach);
        if (digits.isOne()) {
            return new Lengths.Equal(rows, digits.least());
        }
        return place.has("ji") && reach.holds(ji)
                ? new Lengths.InAll(rows, digits, ji)
                : new Lengths.Between(rows, digits);
    }

    private static Lengths table(Fields place, Node node) {
        if (place.has("digits")) {
            place.faultAtKey("digits", new Fault.NotTogether("digits", "lengths"));
        }
        SortedMap<Integer, Integer> rowsByDigits = new TreeMap<>();
        Fields lines = Fields.of("lengths", node, place.mistakes());
        for (String digits : lines.listKeys()) {
            rowsByDigits.put(
                    lines.key(digits).whole(1, MOST_DIGITS), lines.whole(digits, 1, MOST_ROWS));
        }
        int all = rowsByDigits.values().stream().mapToInt(Integer::intValue).sum();
        if (all < 2 || all > MOST_ROWS) {
            lines.fault(new Fault.NotWhole("rows", Integer.toString(all), 2, MOST_ROWS));
            return new Lengths.Equal(2, 1);
        }
        Lengths.Table table = new Lengths.Table(rowsByDigits);
        if (place.whole("rows", 2, MOST_ROWS, all) != all) {
            int rows = place.whole("rows", 2, MOST_ROWS);
            place.fault("rows", new Fault.OtherRows(rows, all));
        }
        ji(place, all, Span.of(table.ji()));
        return table;
    }

    /// The digits of the whole column, which the rows have to come to.
    private static int ji(Fields place, int rows, Span reach) {
        int ji = place.whole("ji", 1, MOST_ROWS * MOST_DIGITS, reach.least());
        if (!reach.holds(ji)) {
            place.fault("ji", new Fault.OtherJi(ji, rows, reach));
        }
        return ji;
    }
}
