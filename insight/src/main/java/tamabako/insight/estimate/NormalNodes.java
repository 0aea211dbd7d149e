package tamabako.insight.estimate;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/// A few points that stand for the standard normal distribution: Gauss-Hermite quadrature.
final class NormalNodes {

    /// One point and its share.
    record Node(double at, double share) {}

    private NormalNodes() {}

    /// So many points; polynomials up to degree 2 n - 1 come out exact.
    static List<Node> of(int count) {
        GaussIntegrator rule = new GaussIntegratorFactory().hermite(count);
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            nodes.add(
                    new Node(
                            Math.sqrt(2) * rule.getPoint(i),
                            rule.getWeight(i) / Math.sqrt(Math.PI)));
        }
        return nodes;
    }
}
