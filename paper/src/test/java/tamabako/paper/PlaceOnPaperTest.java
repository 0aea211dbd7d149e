package tamabako.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tamabako.testkit.Property.forSeeds;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import tamabako.paper.Pages.Line;
import tamabako.paper.wish.Part;
import tamabako.problems.Sheet;

/// Where the print stands on the paper, measured in the written files.
class PlaceOnPaperTest {

    private static final double MM = 72 / 25.4;

    @Test
    void unitsStandUnderUnitsInEveryColumn() {
        forSeeds(
                60,
                draw -> {
                    Sheet sheet = DrawnSheets.columns(draw);
                    Pages pages = Pages.of(sheet, DrawnSheets.wish(draw, Part.SHEET));
                    int columns = 0;
                    for (List<Line> page : pages.pages()) {
                        for (int i = 0; i < page.size(); i++) {
                            if (page.get(i).text().startsWith("No.")) {
                                columns++;
                                assertAligned(Reader.rows(page, i + 1));
                            }
                        }
                    }
                    assertThat(columns).isEqualTo(sheet.problems().size());
                });
    }

    private static void assertAligned(List<Line> rows) {
        double unit = Ink.middle(unit(rows.getFirst()));
        for (Line row : rows) {
            assertThat(Ink.middle(unit(row))).as(row.text()).isCloseTo(unit, within(0.1));
        }
    }

    /// The last digit before the point.
    private static TextPosition unit(Line row) {
        List<TextPosition> digits =
                row.positions().stream()
                        .takeWhile(position -> !position.getUnicode().equals("."))
                        .filter(position -> Character.isDigit(position.getUnicode().charAt(0)))
                        .toList();
        return digits.getLast();
    }

    @Test
    void nothingLeavesThePrintAreaAndNoTwoCharactersTouch() {
        forSeeds(
                60,
                draw -> {
                    Sheet sheet = DrawnSheets.sheet(draw);
                    Pages pages = Pages.of(sheet, DrawnSheets.wish(draw, Part.BOTH));
                    for (List<Line> page : pages.pages()) {
                        List<Rectangle2D> inks = new ArrayList<>();
                        for (Line line : page) {
                            line.positions().stream()
                                    .filter(position -> !isRadical(position))
                                    .map(Ink::of)
                                    .filter(ink -> !ink.isEmpty())
                                    .forEach(inks::add);
                        }
                        assertThat(inks).isNotEmpty().allSatisfy(PlaceOnPaperTest::assertInside);
                        assertApart(inks);
                    }
                });
    }

    /// A radical sign reaches over its number on purpose. In a cube root the reader takes sign and
    /// small 3 as one, and leaves the text of the second empty.
    private static boolean isRadical(TextPosition position) {
        return List.of("√", "∛", "").contains(position.getUnicode());
    }

    private static void assertInside(Rectangle2D ink) {
        assertThat(ink.getMinX()).isGreaterThan(15.5 * MM);
        assertThat(ink.getMaxX()).isLessThan((210 - 15.5) * MM);
        assertThat(ink.getMinY()).isGreaterThan(17 * MM);
        assertThat(ink.getMaxY()).isLessThan((297 - 18.5) * MM);
    }

    private static void assertApart(List<Rectangle2D> inks) {
        inks.sort(Comparator.comparingDouble(Rectangle2D::getMinX));
        for (int i = 0; i < inks.size(); i++) {
            Rectangle2D left = inks.get(i);
            for (int k = i + 1; k < inks.size() && inks.get(k).getMinX() < left.getMaxX(); k++) {
                assertThat(left.intersects(inks.get(k)))
                        .as("%s touches %s", left, inks.get(k))
                        .isFalse();
            }
        }
    }
}
