package tamabako.desk.sheet;

import java.math.BigDecimal;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.marking.Written;
import tamabako.problems.text.ProblemText;

/// A problem as a page shows it.
///
/// @param id its number on the sheet
/// @param isColumn whether it is written in rows
/// @param rows its rows, or the one line that it is written in
/// @param answer its right answer, as it should be written
/// @param work the address where it is worked bead by bead
public record Shown(String id, boolean isColumn, List<String> rows, String answer, String work) {

    private static final char MINUS = '\u2212';

    public Shown {
        rows = List.copyOf(rows);
    }

    /// That problem, as a page in the language of `locale` shows it.
    public static Shown of(Problem problem, Locale locale) {
        return new Shown(
                problem.id(),
                problem instanceof Column,
                rows(problem),
                Written.of(problem).in(locale),
                work(problem));
    }

    /// All of them.
    public static List<Shown> all(List<Problem> problems, Locale locale) {
        return problems.stream().map(problem -> of(problem, locale)).toList();
    }

    /// The address where a problem is worked bead by bead.
    public static String work(Problem problem) {
        return "/work?sum=" + URLEncoder.encode(ProblemText.write(problem), StandardCharsets.UTF_8);
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
}
