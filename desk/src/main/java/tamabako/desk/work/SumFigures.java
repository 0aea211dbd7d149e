package tamabako.desk.work;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tamabako.frame.Cause;
import tamabako.frame.Figures;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;

/// A sum as it is written, figure by figure, so that the figures that a step belongs to can be
/// pointed at.
///
/// A number is a part, such as `row-2` or `divisor`; each of its digits is one as well, named by
/// its power of ten, such as `row-2.1`.
public record SumFigures(Problem problem) {

    /// One number of the sum, with its sign.
    ///
    /// @param part the name of the part
    /// @param sign what is written before it: `+`, `−`, `×`, `÷`, `√`, `∛`, or nothing
    /// @param figures its figures from the left
    public record Line(String part, String sign, List<Figure> figures) {
        public Line {
            figures = List.copyOf(figures);
        }
    }

    /// One figure: a digit, a comma or a point, which are part of nothing.
    public record Figure(String part, String text) {}

    /// The lines of the sum in the order in which they are written.
    public List<Line> lines() {
        return switch (problem) {
            case Column column -> rows(column);
            case Product(_, var multiplicand, var multiplier, _) ->
                    List.of(
                            line("multiplicand", "", multiplicand),
                            line("multiplier", "×", multiplier));
            case Quotient(_, var dividend, var divisor, _) ->
                    List.of(line("dividend", "", dividend), line("divisor", "÷", divisor));
            case Root(_, int degree, var of, _) ->
                    List.of(line("radicand", degree == 2 ? "√" : "∛", of));
        };
    }

    /// The parts that a step with this cause belongs to: numbers, and digits of them.
    List<String> parts(Cause cause) {
        return switch (cause.entry()) {
            case Cause.Setting(Cause.Operand operand, int place) -> digit(part(operand), place);
            case Cause.Row(int row, int place) -> digit("row-" + row, place);
            case Cause.Loan(int row) -> List.of("row-" + row);
            case Cause.LoanReturned(int row) -> List.of("row-" + row);
            case Cause.PartialProduct(int place, _, int multiplierPlace, _) ->
                    List.of("multiplicand." + place, "multiplier." + multiplierPlace);
            case Cause.MultiplicandCleared(int place) -> List.of("multiplicand." + place);
            case Cause.ProductTaken(_, _, int index, _) -> divisor(index);
            default -> List.of();
        };
    }

    /// A root is divided too, but its divisor is not in the sum as written.
    private List<String> divisor(int index) {
        return problem instanceof Quotient(_, _, BigDecimal divisor, _)
                ? List.of("divisor." + (Figures.wholeDigits(divisor) - index))
                : List.of();
    }

    private static List<String> digit(String part, int place) {
        return List.of(part, part + "." + place);
    }

    private static String part(Cause.Operand operand) {
        return operand == Cause.Operand.FIRST_ROW
                ? "row-1"
                : operand.name().toLowerCase(Locale.ROOT);
    }

    private static List<Line> rows(Column column) {
        List<Line> rows = new ArrayList<>();
        for (BigDecimal row : column.rows()) {
            String sign = row.signum() < 0 ? "−" : rows.isEmpty() ? "" : "+";
            rows.add(line("row-" + (rows.size() + 1), sign, row.abs()));
        }
        return rows;
    }

    private static Line line(String part, String sign, BigDecimal number) {
        List<Figure> figures = new ArrayList<>();
        String text = number.toPlainString();
        int point = text.indexOf('.') < 0 ? text.length() : text.indexOf('.');
        for (int i = 0; i < text.length(); i++) {
            int place = i < point ? point - i - 1 : point - i;
            if (i > 0 && i < point && (point - i) % 3 == 0) {
                figures.add(new Figure("", ","));
            }
            figures.add(new Figure(i == point ? "" : part + "." + place, text.substring(i, i + 1)));
        }
        return new Line(part, sign, figures);
    }
}
