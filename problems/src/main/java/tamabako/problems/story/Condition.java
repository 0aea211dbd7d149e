package tamabako.problems.story;

import java.math.BigDecimal;
import java.util.Map;

/// What the numbers of a template keep to, so that the story makes sense.
///
/// @param order `<`, `<=` or `!=`
record Condition(Expression left, String order, Expression right) {

    boolean holds(Map<String, BigDecimal> given) {
        int compared = left.value(given).compareTo(right.value(given));
        return switch (order) {
            case "<" -> compared < 0;
            case "<=" -> compared <= 0;
            case "!=" -> compared != 0;
            default -> throw new IllegalStateException("No order: " + order);
        };
    }
}
