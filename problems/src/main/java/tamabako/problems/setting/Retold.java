package tamabako.problems.setting;

import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Terms;
import tamabako.problems.grade.Section;

/// Problems under the terms of their section.
final class Retold {

    private Retold() {}

    /// `problem` with the points and the mode of `section`; unit, places, rounding and how it is
    /// told stay as they are.
    static Problem in(Section section, Problem problem) {
        return under(
                problem.terms().withPoints(section.points()).withMode(section.mode()), problem);
    }

    /// `problem` under other terms.
    static Problem under(Terms terms, Problem problem) {
        return switch (problem) {
            case Column column -> new Column(column.id(), column.rows(), terms);
            case Product product ->
                    new Product(product.id(), product.multiplicand(), product.multiplier(), terms);
            case Quotient quotient ->
                    new Quotient(quotient.id(), quotient.dividend(), quotient.divisor(), terms);
            case Root root -> new Root(root.id(), root.degree(), root.of(), terms);
        };
    }
}
