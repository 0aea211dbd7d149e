package tamabako.paper.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tamabako.paper.figures.Cells;
import tamabako.paper.layout.Face;

class PrintFontsTest {

    private final PrintFonts fonts = PrintFonts.SHARED;

    /// The reason for the cells: with the font's own widths, units would not stand under units.
    @Test
    void theFontsOwnDigitsAreNotAllOfOneWidth() {
        assertThat(fonts.width(Face.REGULAR, "1")).isLessThan(fonts.width(Face.REGULAR, "0"));
    }

    @Test
    void everyDigitFitsItsCellWithoutTheClearRoomAtItsSides() {
        double clearAtBothSides = 0.12;
        for (char digit = '0'; digit <= '9'; digit++) {
            double advance = Cells.NARROWED * fonts.width(Face.REGULAR, String.valueOf(digit));
            assertThat(advance - clearAtBothSides).isLessThan(Cells.width(digit));
        }
    }

    @Test
    void whatTheCutLacksComesFromTheWholeFont() {
        assertThat(fonts.prints('鷺')).isTrue();
        assertThat(fonts.fontFor(Face.BOLD, "鷺")).isNotSameAs(fonts.fontFor(Face.BOLD, "Name"));
        assertThat(fonts.width(Face.BOLD, "鷺")).isEqualTo(1);
    }

    @Test
    void whatNoFontHasIsNotPrinted() {
        assertThat(fonts.prints(0x1f98a)).isFalse();
    }
}
