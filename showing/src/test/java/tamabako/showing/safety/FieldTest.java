package tamabako.showing.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Fields by WCAG 2.2, technique G176, formula 2: 0.1745 by 0.1309 of the distance, a quarter of it
/// for what flashes.
class FieldTest {

    /// Screens by their diagonal, as people name them.
    @ParameterizedTest
    @CsvSource({
        "24,   1920, 1080, 600,  378.4, 283.8, 26851,  71.0",
        "15.6, 1536, 864,  500,  388.1, 291.1, 28246,  72.8",
        "10.9, 1180, 820,  350,  317.0, 237.8, 18847,  59.4",
        "6.1,  390,  844,  300,  314.2, 235.6, 18510,  58.9",
        "65,   1920, 1080, 1000, 232.9, 174.7, 10168,  43.7",
        "65,   1920, 1080, 1500, 349.3, 262.0, 22879,  65.5",
        "65,   1920, 1080, 4000, 931.5, 698.6, 162695, 174.7",
        "55,   1920, 1080, 2500, 688.0, 516.0, 88764,  129.0",
    })
    void theFieldOfTheNearestSeat(
            double inches,
            int across,
            int down,
            double distance,
            double width,
            double height,
            double limit,
            double row) {
        double screenWidth = inches * 25.4 * across / Math.hypot(across, down);

        Field field = Field.of(distance, screenWidth, across, down);

        assertThat(field.width()).isCloseTo(width, within(0.1));
        assertThat(field.height()).isCloseTo(height, within(0.1));
        assertThat(field.limit()).isCloseTo(limit, within(limit * 0.0005));
        assertThat(field.height() / 4).isCloseTo(row, within(0.06));
        assertThat(field.tallestRow()).isEqualTo((int) Math.floor(field.height() / 4));
    }

    @ParameterizedTest
    @CsvSource({"1500, 251.3, 188.5, 11844", "4000, 670.2, 502.7, 84221"})
    void aProjectorTwoMetresWide(double distance, double width, double height, double limit) {
        Field field = Field.of(distance, 2000, 1920, 1080);

        assertThat(field.width()).isCloseTo(width, within(0.15));
        assertThat(field.height()).isCloseTo(height, within(0.15));
        assertThat(field.limit()).isCloseTo(limit, within(limit * 0.001));
    }

    @Test
    void whereNothingIsKnownTheRectangleOfTheStandardStands() {
        assertThat(Field.UNKNOWN.limit()).isEqualTo(21_824);
        assertThat(Field.UNKNOWN.tallestRow()).isEqualTo(64);
    }

    @Test
    void noFieldIsLargerThanTheScreen() {
        assertThat(Field.of(5000, 100, 390, 844)).isEqualTo(new Field(390, 844));
    }
}
