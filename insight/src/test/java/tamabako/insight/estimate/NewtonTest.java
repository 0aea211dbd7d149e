package tamabako.insight.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.linear.ArrayRealVector;
import org.junit.jupiter.api.Test;

class NewtonTest {

    private static ArrayRealVector at(double... numbers) {
        return new ArrayRealVector(numbers);
    }

    @Test
    void aParabolaIsClimbedInOneStepAndLeavesItsWidth() {
        Likelihood parabola = x -> x.getFirst().subtract(3).pow(2).divide(-2 * 0.25);

        Peak found = Newton.climb(parabola.curve(), at(10)).orElseThrow();

        assertThat(found.point().getEntry(0)).isCloseTo(3, within(1e-14));
        assertThat(found.estimates().getFirst().standardError()).isCloseTo(0.5, within(1e-14));
    }

    /// Bends up along one direction, and in units a thousand times as small as along the other.
    @Test
    void aSaddleIsLeftToTheNearerTop() {
        Likelihood saddle =
                x ->
                        x.get(0)
                                .pow(2)
                                .subtract(x.get(0).pow(4).divide(2))
                                .subtract(x.get(1).multiply(1000).subtract(2).pow(2));

        Peak found = Newton.climb(saddle.curve(), at(0.1, 0)).orElseThrow();

        Largest.between(RaschTest.values(found.estimates()), List.of(1.0, 0.002)).isAtMost(1e-9);
    }

    @Test
    void aSlopeWithoutEndHasNoTop() {
        Likelihood slope = x -> x.getFirst().negate().exp().negate();

        assertThat(Newton.climb(slope.curve(), at(0))).isEmpty();
    }

    @Test
    void aRidgeHasNoTop() {
        Likelihood ridge = x -> x.get(0).add(x.get(1)).pow(2).negate();

        assertThat(Newton.climb(ridge.curve(), at(1, 2))).isEmpty();
    }

    @Test
    void aStepTooFarIsHalved() {
        // Newton's own step from 2 leads away from the top at zero.
        Likelihood flat = x -> x.getFirst().cosh().log().negate();

        Peak found = Newton.climb(flat.curve(), at(2)).orElseThrow();

        assertThat(found.point().getEntry(0)).isCloseTo(0, within(1e-9));
    }
}
