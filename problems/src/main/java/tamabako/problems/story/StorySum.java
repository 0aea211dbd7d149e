package tamabako.problems.story;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Terms;

/// One sum of a template.
///
/// @param name what later sums call its answer; blank for the last
/// @param signs the signs between the numbers: one `*`, one `/`, or any `+` and `-`
/// @param numbers the numbers, one more than signs
record StorySum(String name, String signs, List<Expression> numbers, Terms terms) {

    Problem problem(Map<String, BigDecimal> given) {
        List<BigDecimal> values =
                numbers.stream().map(number -> plain(number.value(given))).toList();
        return switch (signs) {
            case "*" -> new Product("", values.getFirst(), values.getLast(), terms);
            case "/" -> new Quotient("", values.getFirst(), values.getLast(), terms);
            default -> new Column("", rows(values), terms);
        };
    }

    private List<BigDecimal> rows(List<BigDecimal> values) {
        List<BigDecimal> rows = new ArrayList<>(values);
        for (int i = 1; i < rows.size(); i++) {
            rows.set(i, signs.charAt(i - 1) == '-' ? rows.get(i).negate() : rows.get(i));
        }
        return rows;
    }

    static BigDecimal plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
