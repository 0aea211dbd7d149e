package tamabako.insight.estimate;

import java.util.List;
import org.hipparchus.analysis.differentiation.DerivativeStructure;

/// Sums of logarithms of chances, without overflow.
final class Logits {

    private Logits() {}

    /// log(1 + exp(x)).
    static double softplus(double x) {
        return Math.max(x, 0) + Math.log1p(Math.exp(-Math.abs(x)));
    }

    /// log(1 + exp(x)).
    static DerivativeStructure softplus(DerivativeStructure x) {
        return x.getValue() > 0 ? x.add(x.negate().exp().log1p()) : x.exp().log1p();
    }

    /// log(exp(a) + exp(b) + ...).
    static DerivativeStructure logSum(List<DerivativeStructure> logs) {
        double most =
                logs.stream()
                        .mapToDouble(DerivativeStructure::getValue)
                        .max()
                        .orElse(Double.NEGATIVE_INFINITY);
        DerivativeStructure sum = logs.getFirst().getField().getZero();
        for (DerivativeStructure log : logs) {
            sum = sum.add(log.subtract(most).exp());
        }
        return sum.log().add(most);
    }

    /// The chance that a logit stands for.
    static double chance(double logit) {
        return 1 / (1 + Math.exp(-logit));
    }
}
