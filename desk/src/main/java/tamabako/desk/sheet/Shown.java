package tamabako.desk.sheet;

import java.math.BigDecimal;
import java.util.List;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;

/// A problem as a page shows it.
///
/// @param id its number on the sheet
/// @param isColumn whether it is written in rows
/// @param rows its rows, or the one line that it is written in
/// @param answer its right answer
public record Shown(String id, boolean isColumn, List<String> rows, String answer) {

    private static final char MINUS = '\u2212';

    public Shown {
        rows = List.copyOf(rows);
    }

    /// That problem, as a page shows it.
    public static Shown of(Problem problem) {
        return new Shown(
                problem.id(), problem instanceof Column, rows(problem), answer(problem));
    }

    /// All of them.
    public static List<Shown> all(List<Problem> problems) {
        return problems.stream().map(Shown::of).toList();
    }

    /// The whole problem in one line, such as `54 − 29 + 38`.
    public static String line(Problem problem) {
        if (!(problem instanceof Column(_, List<BigDecimal> rows, _))) {
            return rows(problem).getFirst();
        }
        StringBuilder line = new StringBuilder(number(rows.getFirst()));
        for (BigDecimal row : rows.subList(1, rows.size())) {
            line.append(row.signum() < 0 ? " " + MINUS + " " : " + ").append(number(row.abs()));
        }
        return line.toString();
    }

    /// A number with a comma before every third digit and a true minus sign.
    public static String number(BigDecimal number) {
        String plain = number.abs().toPlainString();
        int point = plain.indexOf('.');
        String whole = point < 0 ? plain : plain.substring(0, point);
        String grouped = whole.replaceAll("(?<=\\d)(?=(\\d{3})+$)", ",");
        String sign = number.signum() < 0 ? String.valueOf(MINUS) : "";
        return sign + grouped + (point < 0 ? "" : plain.substring(point));
    }

    private static List<String> rows(Problem problem) {
        return switch (problem) {
            case Column column -> column.rows().stream().map(Shown::number).toList();
            case Product product ->
                    List.of(number(product.multiplicand()) + " × " + number(product.multiplier()));
            case Quotient quotient ->
                    List.of(number(quotient.dividend()) + " ÷ " + number(quotient.divisor()));
            case Root root -> List.of((root.degree() == 2 ? "√" : "∛") + number(root.of()));
        };
    }

    private static String answer(Problem problem) {
        String value = number(problem.answer().value());
        return problem.answer()
                .remainder()
                .filter(remainder -> remainder.signum() != 0)
                .map(remainder -> value + " r " + number(remainder))
                .orElse(value);
    }
}
