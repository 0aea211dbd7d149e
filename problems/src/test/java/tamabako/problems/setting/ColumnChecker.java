package tamabako.problems.setting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tamabako.problems.Column;
import tamabako.problems.setting.PublishedPapers.Line;

/// Checks the columns of a stretch against the published table, and each against the customs of
/// setters. All complaints are collected; none means that the columns are in order.
final class ColumnChecker {

    private final Line line;
    private final List<Column> columns;
    private final Complaints complaints = new Complaints();
    private final Complaints customs = new Complaints();

    private ColumnChecker(Line line, List<Column> columns) {
        this.line = line;
        this.columns = columns;
    }

    /// The checker of `columns`, which has checked them.
    static ColumnChecker of(Line line, List<Column> columns) {
        ColumnChecker checker = new ColumnChecker(line, columns);
        checker.check();
        return checker;
    }

    /// What breaks the table.
    List<String> complaints() {
        return complaints.all();
    }

    /// What breaks a custom.
    List<String> customsBroken() {
        return customs.all();
    }

    private void check() {
        columns.forEach(this::shape);
        columns.forEach(this::rows);
        columns.forEach(this::totals);
        if (line.has("by")) {
            columns.forEach(this::hand);
        }
        signs();
        if (line.has("decimals")) {
            long decimals =
                    columns.stream()
                            .filter(column -> column.rows().getFirst().scale() == 2)
                            .count();
            complaints.unless(
                    line.allows("decimals", (int) decimals), "decimals in", decimals, "columns");
        }
    }

    private void shape(Column column) {
        List<BigDecimal> rows = column.rows();
        complaints.unless(line.allows("rows", rows.size()), column.id(), ":", rows.size(), "rows");
        int ji = 0;
        Map<Integer, Integer> lengths = new TreeMap<>();
        for (BigDecimal row : rows) {
            int digits = DigitCount.of(row).length();
            ji += digits;
            lengths.merge(digits, 1, Integer::sum);
            complaints.unless(
                    line.allows("digits", digits), column.id(), ": row of", digits, "digits");
            complaints.unless(row.signum() != 0, column.id(), ": a row of 0");
        }
        complaints.unless(line.allows("ji", ji), column.id(), ":", ji, "ji");
        if (line.has("lengths")) {
            complaints.unless(
                    lengths.equals(table(line.value("lengths"))),
                    column.id(),
                    ": rows by length",
                    lengths);
        }
    }

    private static Map<Integer, Integer> table(String text) {
        Map<Integer, Integer> table = new TreeMap<>();
        for (String entry : text.split(",", -1)) {
            String[] pair = entry.split(":", 2);
            table.put(Integer.valueOf(pair[0]), Integer.valueOf(pair[1]));
        }
        return table;
    }

    /// Customs of rows: shown for rows of two digits and more, where there are enough of them.
    private void rows(Column column) {
        List<String> rows = column.rows().stream().map(DigitCount::of).toList();
        int fewest = rows.stream().mapToInt(String::length).min().orElseThrow();
        if (fewest < 2 || line.has("by")) {
            return;
        }
        customs.unless(new HashSet<>(rows).size() == rows.size(), column.id(), ": two rows alike");
        for (int i = 0; i < rows.size(); i++) {
            String row = rows.get(i);
            customs.unless(row.chars().distinct().count() > 1, column.id(), ": row", row);
            customs.unless(
                    !"0123456789 9876543210".contains(row) || row.length() < 3,
                    column.id(),
                    ": row",
                    row);
            if (i > 0) {
                customs.unless(
                        row.charAt(0) != rows.get(i - 1).charAt(0),
                        column.id(),
                        ":",
                        row,
                        "after",
                        rows.get(i - 1),
                        "begins alike");
            }
        }
        long evens =
                rows.stream().filter(row -> (row.charAt(row.length() - 1) - '0') % 2 == 0).count();
        customs.unless(evens < rows.size(), column.id(), ": all rows even");
        if (rows.size() == 10 && rows.stream().mapToInt(String::length).sum() == 100) {
            for (char digit = '0'; digit <= '9'; digit++) {
                int sought = digit;
                long times = String.join("", rows).chars().filter(c -> c == sought).count();
                customs.unless(
                        times >= 8 && times <= 12,
                        column.id(),
                        ":",
                        digit,
                        "stands",
                        times,
                        "times");
            }
        }
    }

    private void totals(Column column) {
        BigDecimal total = BigDecimal.ZERO;
        int below = 0;
        int run = 0;
        boolean sinks = false;
        for (int i = 0; i < column.rows().size(); i++) {
            BigDecimal row = column.rows().get(i);
            BigDecimal next = total.add(row);
            below += total.signum() >= 0 && next.signum() < 0 ? 1 : 0;
            sinks |= next.signum() < 0;
            total = next;
            run = row.signum() < 0 ? run + 1 : 0;
            complaints.unless(i > 0 || row.signum() > 0, column.id(), ": first row is taken");
            customs.unless(run <= 2, column.id(), ":", run, "rows taken running");
        }
        complaints.unless(
                total.compareTo(column.answer().value()) == 0,
                column.id(),
                ": key",
                column.answer().figures(),
                ", sum",
                total);
        boolean negative = total.signum() < 0;
        complaints.unless(negative || !sinks, column.id(), ": total falls below zero on the way");
        complaints.unless(
                !negative || below <= 2, column.id(), ": falls below zero", below, "times");
    }

    private void hand(Column column) {
        OwnHand hand = OwnHand.of(column.rows());
        String used = hand.used();
        for (int i = 0; i < used.length(); i++) {
            char technique = used.charAt(i);
            complaints.unless(
                    line.value("by").indexOf(technique) >= 0, column.id(), ": by", technique);
        }
        for (int i = 0; i < line.value("each").length(); i++) {
            char technique = line.value("each").charAt(i);
            complaints.unless(used.indexOf(technique) >= 0, column.id(), ": not by", technique);
        }
        for (int i = 0; i < line.value("taken").length(); i++) {
            char technique = line.value("taken").charAt(i);
            complaints.unless(
                    hand.taken().indexOf(technique) >= 0,
                    column.id(),
                    ": nothing taken by",
                    technique);
        }
        complaints.unless(
                line.value("run").isEmpty() || hand.ranOn() == line.value("run").equals("required"),
                column.id(),
                ": carries run on:",
                hand.ranOn());
    }

    private void signs() {
        List<Boolean> mixed = new ArrayList<>();
        List<Boolean> negative = new ArrayList<>();
        for (Column column : columns) {
            int minus = (int) column.rows().stream().filter(row -> row.signum() < 0).count();
            mixed.add(minus > 0);
            negative.add(column.answer().value().signum() < 0);
            complaints.unless(
                    minus == 0 || line.allows("minus", minus),
                    column.id(),
                    ":",
                    minus,
                    "minus rows");
        }
        share("mixed", mixed);
        share("negative", negative);
    }

    private void share(String key, List<Boolean> is) {
        if (!line.has(key)) {
            return;
        }
        String[] halves = line.value(key).split("\\+", 2);
        int half = is.size() / 2;
        if (halves.length == 1) {
            complaints.unless(count(is) == Integer.parseInt(halves[0]), count(is), key);
            return;
        }
        long first = count(is.subList(0, half));
        long second = count(is.subList(half, is.size()));
        complaints.unless(first == Integer.parseInt(halves[0]), first, key, "in the first half");
        complaints.unless(second == Integer.parseInt(halves[1]), second, key, "in the second half");
    }

    private static long count(List<Boolean> is) {
        return is.stream().filter(one -> one).count();
    }
}
