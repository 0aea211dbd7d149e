package tamabako.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.util.List;
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
                                Placed.unitsUnderUnits(Reader.rows(page, i + 1));
                            }
                        }
                    }
                    assertThat(columns).isEqualTo(sheet.problems().size());
                });
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
