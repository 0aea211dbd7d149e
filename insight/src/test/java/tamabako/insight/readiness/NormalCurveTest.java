package tamabako.insight.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class NormalCurveTest {

    /// Source: the tables of M. Abramowitz and I. A. Stegun, "Handbook of Mathematical Functions"
    /// (1964), 26.1.
    @Test
    void itAgreesWithTheTables() {
        assertThat(NormalCurve.below(0)).isEqualTo(0.5);
        assertThat(NormalCurve.below(1)).isCloseTo(0.841_344_746_068_543, within(1e-14));
        assertThat(NormalCurve.below(-2)).isCloseTo(0.022_750_131_948_179, within(1e-14));
        assertThat(NormalCurve.below(-5)).isCloseTo(2.866_515_718_8e-7, within(1e-15));
    }

    @Test
    void itIsTheSumOfTheCurve() {
        double sum = 0.5;
        double width = 1e-3;
        for (int i = 0; i < 8_000; i++) {
            double middle = (i + 0.5) * width;
            sum += width * Math.exp(-middle * middle / 2) / Math.sqrt(2 * Math.PI);
            assertThat(NormalCurve.below((i + 1) * width)).isCloseTo(sum, within(1e-7));
        }
        assertThat(NormalCurve.below(-40)).isZero();
        assertThat(NormalCurve.below(40)).isEqualTo(1);
    }
}
