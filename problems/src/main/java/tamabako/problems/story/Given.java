package tamabako.problems.story;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import tamabako.problems.making.draw.Draws;

/// How a number of a template is found.
sealed interface Given {

    /// A value, drawn or worked out from those `before`.
    BigDecimal draw(Draws draws, Map<String, BigDecimal> before);

    /// From `least` on in equal steps up to `most`, each equally likely.
    record Range(BigDecimal least, BigDecimal most, BigDecimal step) implements Given {

        @Override
        public BigDecimal draw(Draws draws, Map<String, BigDecimal> before) {
            long steps = most.subtract(least).divide(step, 0, RoundingMode.DOWN).longValueExact();
            return least.add(step.multiply(BigDecimal.valueOf(draws.between(0, steps))));
        }
    }

    /// One of some, each equally likely.
    record Choice(List<BigDecimal> choices) implements Given {

        @Override
        public BigDecimal draw(Draws draws, Map<String, BigDecimal> before) {
            return choices.get((int) draws.below(choices.size()));
        }
    }

    /// Worked out from numbers given before.
    record Worked(Expression expression) implements Given {

        @Override
        public BigDecimal draw(Draws draws, Map<String, BigDecimal> before) {
            return expression.value(before);
        }
    }
}
