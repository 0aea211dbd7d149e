package tamabako.problems.making.column;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import tamabako.problems.Column;
import tamabako.problems.Terms;

/// Every column of a small shape, written out and held against what is asked by the conditions
/// themselves; and what is drawn, held against all of them.
final class BruteForce {

    private BruteForce() {}

    /// All columns that are as asked, as text.
    static List<String> all(Shape shape, Signs signs, List<Condition> conditions) {
        List<String> all = new ArrayList<>();
        Predicate<Column> granted =
                column ->
                        shape.missedBy(column).isEmpty()
                                && signs.missedBy(column).isEmpty()
                                && conditions.stream()
                                        .allMatch(one -> one.missedBy(column).isEmpty());
        write(shape, new ArrayList<>(), granted, all);
        return all;
    }

    private static void write(
            Shape shape, List<BigDecimal> rows, Predicate<Column> granted, List<String> all) {
        if (rows.size() == shape.rows()) {
            if (granted.test(new Column("", rows, Terms.PLAIN))) {
                all.add(rows.toString());
            }
            return;
        }
        long most = 1;
        for (int digit = 0; digit < shape.lengths().most(); digit++) {
            most *= 10;
        }
        for (long row = rows.isEmpty() ? 1 : 1 - most; row < most; row++) {
            if (row != 0) {
                rows.add(BigDecimal.valueOf(row, shape.places()));
                write(shape, rows, granted, all);
                rows.removeLast();
            }
        }
    }

    /// How often each column comes in so many draws.
    static Map<String, Integer> drawn(Source source, Asked asked, int times, long seed) {
        var draws = new tamabako.problems.making.draw.Draws(seed);
        Facts facts = asked.facts();
        Map<String, Integer> drawn = new TreeMap<>();
        for (int i = 0; i < times; ) {
            if (source.draw(draws, facts)) {
                drawn.merge(text(facts), 1, Integer::sum);
                i++;
            }
        }
        return drawn;
    }

    static String text(Facts facts) {
        List<BigDecimal> rows = new ArrayList<>();
        for (int row = 0; row < facts.rows(); row++) {
            rows.add(BigDecimal.valueOf(facts.number(row), facts.places()));
        }
        return rows.toString();
    }

    /// Pearson's chi-square of the draws against `weights`, less its mean, in standard deviations:
    /// for many columns it is about normal.
    static double surprise(Map<String, Integer> drawn, Map<String, Double> weights) {
        double all = drawn.values().stream().mapToInt(one -> one).sum();
        double sum = weights.values().stream().mapToDouble(one -> one).sum();
        double chiSquare = 0;
        for (Map.Entry<String, Double> one : weights.entrySet()) {
            double expected = all * one.getValue() / sum;
            double off = drawn.getOrDefault(one.getKey(), 0) - expected;
            chiSquare += off * off / expected;
        }
        double freedom = weights.size() - 1.0;
        return (chiSquare - freedom) / Math.sqrt(2 * freedom);
    }
}
