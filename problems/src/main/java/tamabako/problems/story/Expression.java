package tamabako.problems.story;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/// A number of a template, worked out from others.
sealed interface Expression {

    /// Its value, exact.
    ///
    /// @throws ArithmeticException if it has no end behind the point
    BigDecimal value(Map<String, BigDecimal> given);

    /// The names that stand in it.
    Set<String> names();

    /// A number as it stands there.
    record Figure(BigDecimal number) implements Expression {

        @Override
        public BigDecimal value(Map<String, BigDecimal> given) {
            return number;
        }

        @Override
        public Set<String> names() {
            return Set.of();
        }
    }

    /// A number by its name.
    record Named(String name) implements Expression {

        @Override
        public BigDecimal value(Map<String, BigDecimal> given) {
            return Objects.requireNonNull(given.get(name));
        }

        @Override
        public Set<String> names() {
            return Set.of(name);
        }
    }

    /// Two numbers taken together.
    ///
    /// @param sign `+`, `-`, `*` or `/`
    record Both(char sign, Expression left, Expression right) implements Expression {

        @Override
        public BigDecimal value(Map<String, BigDecimal> given) {
            BigDecimal one = left.value(given);
            BigDecimal other = right.value(given);
            return switch (sign) {
                case '+' -> one.add(other);
                case '-' -> one.subtract(other);
                case '*' -> one.multiply(other);
                case '/' -> one.divide(other);
                default -> throw new IllegalStateException("No sign: " + sign);
            };
        }

        @Override
        public Set<String> names() {
            Set<String> names = new TreeSet<>(left.names());
            names.addAll(right.names());
            return names;
        }
    }
}
