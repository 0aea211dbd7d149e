package tamabako.showing.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Luminances and shares of red by the formulas of WCAG 2.2, worked out beforehand.
class ColourTest {

    @ParameterizedTest
    @CsvSource({
        "#000000, 0",
        "#FFFFFF, 1",
        "#808080, 0.21586",
        "#777777, 0.18447",
        "#595959, 0.09990",
        "#5A5A5A, 0.10224",
        "#E7E7E7, 0.79910",
        "#222222, 0.01600",
        "#F5F0E1, 0.87169",
        "#FF0000, 0.21260",
        "#00FF00, 0.71520",
        "#0000FF, 0.07220"
    })
    void luminances(String colour, double luminance) {
        assertThat(Colour.parse(colour).luminance()).isCloseTo(luminance, within(5e-6));
    }

    @ParameterizedTest
    @CsvSource({
        "#FF0000, 1.000, true",
        "#D32F2F, 0.920, true",
        "#B00020, 0.968, true",
        "#D55E00, 0.856, true",
        "#E69F00, 0.695, false",
        "#CC79A7, 0.511, false",
        "#FFFFFF, 0.333, false",
        "#000000, 0.000, false"
    })
    void sharesOfRed(String colour, double share, boolean saturated) {
        assertThat(Colour.parse(colour).redShare()).isCloseTo(share, within(0.0006));
        assertThat(Colour.parse(colour).isSaturatedRed()).isEqualTo(saturated);
    }

    /// A change too small to count is too faint to read: under 3 to 1, whatever the colours.
    @Test
    void faintnessIsNoWayOut() {
        for (int dark = 0; dark <= 255; dark++) {
            for (int light = dark; light <= 255; light++) {
                Colour one = new Colour(dark, dark, dark);
                Colour other = new Colour(light, light, light);
                if (other.luminance() - one.luminance() < 0.10) {
                    assertThat(one.contrastTo(other)).isLessThan(3);
                }
            }
        }
    }

    @Test
    void aColourIsReadAndWritten() {
        assertThat(Colour.parse("#2a231C")).hasToString("#2A231C");
        assertThatThrownBy(() -> Colour.parse("2A231C")).hasMessageContaining("#2A231C");
        assertThatThrownBy(() -> new Colour(256, 0, 0)).hasMessageContaining("0 to 255");
    }
}
