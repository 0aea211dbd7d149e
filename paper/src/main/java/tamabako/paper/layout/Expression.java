package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.figures.Cells;
import tamabako.paper.figures.PrintedNumber;
import tamabako.paper.layout.Mark.Figures;
import tamabako.paper.layout.Mark.Radical;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;

/// A product, quotient or root as it stands on paper, up to its equals sign. Widths are parts of
/// the size of the figures.
///
/// @param label the number of the problem
/// @param first the multiplicand, dividend or radicand
/// @param sign `×`, `÷` or `√`
/// @param second the multiplier or divisor; empty for a root
/// @param degree 2 or 3 for a root, else 1
record Expression(String label, String first, char sign, String second, int degree) {

    private static final char TIMES = '\u00d7';
    private static final char DIVIDED_BY = '\u00f7';
    private static final char ROOT_OF = '\u221a';

    /// The room of a sign between two numbers, and of the equals sign.
    private static final double SIGN = 1.2;

    /// The room of a radical sign before its number, and of its bar after it.
    private static final double RADICAL = 0.76;

    private static final double BAR_BEYOND = 0.1;

    static Expression of(Numbered numbered) {
        String label = numbered.label();
        Problem problem = numbered.problem();
        return switch (problem) {
            case Product(_, var multiplicand, var multiplier, var terms) ->
                    new Expression(
                            label,
                            PrintedNumber.of(multiplicand, terms.unit()).figures(),
                            TIMES,
                            PrintedNumber.of(multiplier).figures(),
                            1);
            case Quotient(_, var dividend, var divisor, var terms) ->
                    new Expression(
                            label,
                            PrintedNumber.of(dividend, terms.unit()).figures(),
                            DIVIDED_BY,
                            PrintedNumber.of(divisor).figures(),
                            1);
            case Root(_, int degree, var of, var terms) ->
                    new Expression(
                            label,
                            PrintedNumber.of(of, terms.unit()).figures(),
                            ROOT_OF,
                            "",
                            degree);
            case Column _ -> throw new IllegalArgumentException("A column is no expression.");
        };
    }

    /// The expression in one line, for messages.
    String told() {
        return degree == 1 ? first + " " + sign + " " + second : sign + first;
    }

    double firstWidth() {
        return Cells.width(first) + (degree == 1 ? 0 : RADICAL);
    }

    double secondWidth() {
        return degree == 1 ? SIGN + Cells.width(second) : BAR_BEYOND;
    }

    /// The marks of this expression among others of these widths, from `x` to the right.
    List<Mark> marks(Widths widths, double x, double baseline, double figures) {
        double end = x + figures * widths.upToEquals();
        double after = widths.flush() ? secondWidth() : widths.second();
        double middle = end - figures * after;
        double start = middle - figures * Cells.width(first);
        List<Mark> marks = new ArrayList<>();
        if (degree > 1) {
            double bar = middle + figures * BAR_BEYOND;
            marks.add(new Radical(start - figures * RADICAL, baseline, figures, degree, bar));
        }
        marks.add(new Figures(start, baseline, figures, first));
        if (degree == 1) {
            marks.add(sign(sign, middle, baseline, figures));
            marks.add(new Figures(middle + figures * SIGN, baseline, figures, second));
        }
        marks.add(sign('=', end, baseline, figures));
        return marks;
    }

    private static Mark sign(char sign, double x, double baseline, double figures) {
        double inset = figures * (SIGN - Cells.LETTER) / 2;
        return new Figures(x + inset, baseline, figures, String.valueOf(sign));
    }

    /// The widths of expressions that stand one below the other.
    ///
    /// @param first the widest up to the sign
    /// @param second the widest from the sign to the equals sign
    /// @param both the widest up to the equals sign
    /// @param flush whether only the equals signs stand under each other; else the signs between
    ///   the numbers do too
    record Widths(double first, double second, double both, boolean flush) {

        /// Signs under signs.
        static Widths of(List<Expression> all) {
            return new Widths(
                    all.stream().mapToDouble(Expression::firstWidth).max().orElseThrow(),
                    all.stream().mapToDouble(Expression::secondWidth).max().orElseThrow(),
                    all.stream()
                            .mapToDouble(each -> each.firstWidth() + each.secondWidth())
                            .max()
                            .orElseThrow(),
                    false);
        }

        /// The same with only the equals signs under each other, which takes less room where the
        /// numbers differ in length.
        Widths closer() {
            return new Widths(first, second, both, true);
        }

        double upToEquals() {
            return flush ? both : first + second;
        }

        /// The width up to and with the equals sign.
        double whole() {
            return upToEquals() + SIGN;
        }
    }
}
