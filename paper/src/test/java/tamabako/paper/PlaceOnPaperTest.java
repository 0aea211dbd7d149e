package tamabako.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tamabako.testkit.Property.forSeeds;

import java.util.List;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import tamabako.paper.Pages.Line;
import tamabako.paper.wish.PageSize;
import tamabako.paper.wish.Part;
import tamabako.problems.Sheet;

/// Where the print stands on the paper, measured in the written files.
class PlaceOnPaperTest {

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
                    Placed.insideAndApart(pages, PageSize.A4);
                });
    }
}
