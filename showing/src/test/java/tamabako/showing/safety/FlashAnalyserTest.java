package tamabako.showing.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Worked cases, drawn in DejaVu Sans with the widest figures, by WCAG 2.2 ("general flash and red
/// flash thresholds") and technique G176; the boxes and shares were measured beforehand with
/// another rasteriser, so that a pixel at each edge and half a point of ink are allowed.
class FlashAnalyserTest {

    private static final String CREAM = "#F5F0E1";
    private static final String INK = "#222222";

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "C1,  Bold,    888,        234.37, #FFFFFF, #000000, 6, 3, 60,  7.0, 7.0, 632, 244, 95.3, 58.5, TOO_MUCH",
        "C1b, Bold,    888,        234.37, #FFFFFF, #000000, 4, 4, 60,  7.5, 7.5, 632, 244, 95.3, 58.5, TOO_MUCH",
        "C2,  Bold,    888,        64,     #FFFFFF, #000000, 6, 3, 60,  7.0, 7.0, 173, 66,  13.1, 7.9,  SMALL_ENOUGH",
        "C2b, Bold,    8888888888, 64,     #FFFFFF, #000000, 4, 4, 60,  7.5, 7.5, 600, 66,  25.8, 15.1, ONLY_BY_THE_LETTER",
        "C2c, Bold,    8888888888, 61,     #FFFFFF, #000000, 4, 4, 60,  7.5, 7.5, 572, 64,  25.0, 14.3, SMALL_ENOUGH",
        "C3,  Bold,    888,        100,    #FFFFFF, #000000, 6, 3, 60,  7.0, 7.0, 269, 104, 32.0, 19.1, ONLY_BY_THE_LETTER",
        "C4,  Regular, 88,         160,    #FFFFFF, #000000, 6, 3, 60,  7.0, 7.0, 249, 166, 47.3, 20.5, ONLY_BY_THE_LETTER",
        "C7,  Bold,    888,        200,    #FFFFFF, #000000, 16, 6, 60, 3.0, 3.0, 539, 208, 81.3, 50.3, SLOW_ENOUGH",
        "C7c, Bold,    888,        200,    #FFFFFF, #000000, 14, 6, 60, 3.0, 3.0, 539, 208, 81.3, 50.3, ONLY_BY_THE_LETTER",
        "C8b, Bold,    888,        200,    #5A5A5A, #000000, 6, 3, 60,  7.0, 7.0, 538, 206, 80.5, 48.7, TOO_MUCH",
        "C9,  Bold,    8,          140,    #222222, #F5F0E1, 6, 3, 60,  7.0, 7.0, 111, 146, 18.6, 12.7, SMALL_ENOUGH",
        "C9b, Bold,    8,          170,    #222222, #F5F0E1, 6, 3, 60,  7.0, 7.0, 135, 177, 27.4, 18.6, ONLY_BY_THE_LETTER",
        "C10, Bold,    88,         60,     #FF0000, #000000, 6, 3, 60,  7.0, 7.0, 104, 62,  7.4,  4.4,  RED",
        "C10b,Bold,    88,         60,     #D55E00, #FFFFFF, 6, 3, 60,  7.0, 7.0, 105, 62,  7.5,  4.7,  RED",
        "C14, Bold,    88,         64,     #FFFFFF, #000000, 12, 5, 120, 7.5, 7.5, 111, 66, 8.4,  5.2,  SMALL_ENOUGH",
    })
    void theWorkedCases(
            String id,
            String font,
            String text,
            double height,
            String ink,
            String ground,
            int on,
            int off,
            double hertz,
            double flashes,
            double atOnePlace,
            int boxWidth,
            int boxHeight,
            double boxPercent,
            double inkPercent,
            Verdict verdict) {
        FlashReport report =
                FlashAnalyser.analyse(
                        new Drawn(font, height, ink, ground)
                                .showing(List.of(text), 15, on, off, hertz),
                        Field.UNKNOWN,
                        FlashAnalyser.USUAL_PEAK);

        assertThat(report.verdict()).as(id).isEqualTo(verdict);
        assertThat(report.flashes()).as(id).isEqualTo(flashes);
        assertThat(report.flashesAtOnePlace()).as(id).isEqualTo(atOnePlace);
        assertThat(report.boxWidth()).as(id).isCloseTo(boxWidth, within(1));
        assertThat(report.boxHeight()).as(id).isCloseTo(boxHeight, within(1));
        assertThat(100 * report.boxShare()).as(id).isCloseTo(boxPercent, within(0.8));
        assertThat(100 * report.inkShare()).as(id).isCloseTo(inkPercent, within(0.5));
        assertThat(report.shortestPeriod()).isCloseTo((on + off) * 1000 / hertz, within(1e-6));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "C11,  378.4, 283.8, 70,  256, 73,  17.4, 10.6, SMALL_ENOUGH",
        "C12,  232.9, 174.7, 64,  234, 68,  38.9, 23.6, ONLY_BY_THE_LETTER",
        "C12b, 232.9, 174.7, 43,  158, 46,  17.9, 11.0, SMALL_ENOUGH",
        "C13,  931.5, 698.6, 170, 621, 177, 16.9, 10.0, SMALL_ENOUGH",
    })
    void theSameNumbersForOtherSeats(
            String id,
            double fieldWidth,
            double fieldHeight,
            double height,
            int boxWidth,
            int boxHeight,
            double boxPercent,
            double inkPercent,
            Verdict verdict) {
        FlashReport report =
                FlashAnalyser.analyse(
                        new Drawn("Bold", height, INK, CREAM)
                                .showing(List.of("8888"), 15, 6, 3, 60),
                        new Field(fieldWidth, fieldHeight),
                        FlashAnalyser.USUAL_PEAK);

        assertThat(report.verdict()).as(id).isEqualTo(verdict);
        assertThat(report.boxWidth()).as(id).isCloseTo(boxWidth, within(1));
        assertThat(report.boxHeight()).as(id).isCloseTo(boxHeight, within(1));
        assertThat(100 * report.boxShare()).as(id).isCloseTo(boxPercent, within(0.8));
        assertThat(100 * report.inkShare()).as(id).isCloseTo(inkPercent, within(0.5));
    }

    /// C5 and C6: numbers exchanged without a pause. A pixel changes once an exchange, the row as a
    /// whole ends and begins.
    @ParameterizedTest(name = "{0}")
    @CsvSource({"C5, 10, 6.0, 3.0, ONLY_BY_THE_LETTER", "C6, 9, 7.0, 3.5, TOO_MUCH"})
    void withoutAPauseEveryExchangeIsAnEndAndABeginning(
            String id, int frames, double flashes, double atOnePlace, Verdict verdict) {
        FlashReport report =
                FlashAnalyser.analyse(
                        new Drawn("Bold", 200, "#FFFFFF", "#000000")
                                .showing(List.of("888", "777"), 15, frames, 0, 60),
                        Field.UNKNOWN,
                        FlashAnalyser.USUAL_PEAK);

        assertThat(report.flashes()).as(id).isEqualTo(flashes);
        assertThat(report.flashesAtOnePlace()).as(id).isEqualTo(atOnePlace);
        assertThat(report.verdict()).as(id).isEqualTo(verdict);
    }

    /// C8: just under the change that counts in WCAG 2.2; what broadcasting says depends on how
    /// bright the screen is (ITU-R BT.1702), and the contrast is too low to read.
    @Test
    void aFaintChangeIsNoFlashOnADimScreenOnly() {
        List<Shown> faint =
                new Drawn("Bold", 200, "#595959", "#000000").showing(List.of("888"), 15, 6, 3, 60);

        assertThat(FlashAnalyser.analyse(faint, Field.UNKNOWN, 200).verdict())
                .isEqualTo(Verdict.NO_FLASH);
        assertThat(FlashAnalyser.analyse(faint, Field.UNKNOWN, 201).verdict())
                .isEqualTo(Verdict.TOO_MUCH);
        assertThat(Colour.parse("#595959").contrastTo(Colour.parse("#000000")))
                .isCloseTo(2.998, within(0.0005));
    }

    /// C15: whatever the figures, a ground that changes is the whole screen.
    @Test
    void aGroundThatChangesIsTheWholeField() {
        Picture white = plain(400, 300, 0xFFFFFF);
        Picture black = plain(400, 300, 0x000000);
        double frame = 1000 / 60.0;
        List<Shown> shown = new ArrayList<>(List.of(new Shown(0, black)));
        for (int k = 0; k < 15; k++) {
            shown.add(new Shown(1000 + 9 * k * frame, white));
            shown.add(new Shown(1000 + (9 * k + 6) * frame, black));
        }

        FlashReport report = FlashAnalyser.analyse(shown, Field.UNKNOWN, 500);

        assertThat(report.verdict()).isEqualTo(Verdict.TOO_MUCH);
        assertThat(report.boxShare()).isEqualTo(1);
        assertThat(report.inkShare()).isEqualTo(1);
        assertThat(report.flashes()).isEqualTo(7);
    }

    /// "Does not have to take place from one frame to another": a fade is the same change.
    @Test
    void aFadeCountsLikeAJump() {
        int[] greys = {0x000000, 0x404040, 0x808080, 0xC0C0C0, 0xFFFFFF, 0x909090, 0x000000};
        List<Shown> fading = new ArrayList<>();
        for (int k = 0; k < 70; k++) {
            fading.add(new Shown(k * 20, plain(400, 300, greys[k % greys.length])));
        }

        FlashReport report = FlashAnalyser.analyse(fading, Field.UNKNOWN, 500);

        assertThat(report.verdict()).isEqualTo(Verdict.TOO_MUCH);
        assertThat(report.flashes()).isBetween(7.0, 7.5);
    }

    @Test
    void largeSlowNumbersForLongAreWithinTheLimitsAndTiring() {
        Drawn large = new Drawn("Bold", 200, INK, CREAM);

        FlashReport longOne =
                FlashAnalyser.analyse(
                        large.showing(List.of("888"), 15, 16, 6, 60), Field.UNKNOWN, 500);
        FlashReport shortOne =
                FlashAnalyser.analyse(
                        large.showing(List.of("888"), 10, 16, 6, 60), Field.UNKNOWN, 500);

        assertThat(longOne.verdict()).isEqualTo(Verdict.SLOW_ENOUGH);
        assertThat(longOne.restAdvised()).isTrue();
        assertThat(shortOne.restAdvised()).isFalse();
    }

    @Test
    void picturesThatDoNotBelongTogetherAreRefused() {
        Shown first = new Shown(0, plain(2, 2, 0));

        assertThatThrownBy(() -> FlashAnalyser.analyse(List.of(), Field.UNKNOWN, 500))
                .hasMessageContaining("at least one picture");
        assertThatThrownBy(() ->
                        FlashAnalyser.analyse(
                                List.of(first, new Shown(10, plain(2, 3, 0))), Field.UNKNOWN, 500))
                .hasMessageContaining("another size");
        assertThatThrownBy(() ->
                        FlashAnalyser.analyse(
                                List.of(first, new Shown(-1, plain(2, 2, 0))), Field.UNKNOWN, 500))
                .hasMessageContaining("before");
    }

    private static Picture plain(int width, int height, int rgb) {
        int[] pixels = new int[width * height];
        Arrays.fill(pixels, rgb);
        return new Picture(width, height, pixels);
    }
}
