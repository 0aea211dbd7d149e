package tamabako.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.text.TextPosition;
import tamabako.paper.Pages.Line;
import tamabako.paper.wish.PageSize;

/// Where ink is on upright pages.
final class Placed {

    private static final double MM = 72 / 25.4;

    private Placed() {}

    /// No ink leaves the print area, and no two characters touch.
    static void insideAndApart(Pages pages, PageSize size) {
        for (List<Line> page : pages.pages()) {
            List<Rectangle2D> inks = inks(page);
            assertThat(inks).isNotEmpty().allSatisfy(ink -> assertInside(ink, size));
            assertApart(inks);
        }
    }

    /// The last digits before the point of these rows stand under each other.
    static void unitsUnderUnits(List<Line> rows) {
        double unit = Ink.middle(unit(rows.getFirst()));
        for (Line row : rows) {
            assertThat(Ink.middle(unit(row))).as(row.text()).isCloseTo(unit, within(0.1));
        }
    }

    private static TextPosition unit(Line row) {
        return row.positions().stream()
                .takeWhile(position -> !position.getUnicode().equals("."))
                .filter(position -> Character.isDigit(position.getUnicode().charAt(0)))
                .toList()
                .getLast();
    }

    /// The boxes around the ink of each character of a page.
    static List<Rectangle2D> inks(List<Line> page) {
        List<Rectangle2D> inks = new ArrayList<>();
        for (Line line : page) {
            line.positions().stream()
                    .filter(position -> !isRadical(position))
                    .map(Ink::of)
                    .filter(ink -> !ink.isEmpty())
                    .forEach(inks::add);
        }
        return inks;
    }

    /// A radical sign reaches over its number on purpose. In a cube root the reader takes sign and
    /// small 3 as one, and leaves the text of the second empty.
    private static boolean isRadical(TextPosition position) {
        return List.of("√", "∛", "").contains(position.getUnicode());
    }

    private static void assertInside(Rectangle2D ink, PageSize size) {
        double edge = size == PageSize.LETTER ? 13.5 : 18.5;
        assertThat(ink.getMinX()).isGreaterThan(15.5 * MM);
        assertThat(ink.getMaxX()).isLessThan((size.width() - 15.5) * MM);
        assertThat(ink.getMinY()).isGreaterThan((edge - 1.5) * MM);
        assertThat(ink.getMaxY()).isLessThan((size.height() - edge) * MM);
    }

    static void assertApart(List<Rectangle2D> inks) {
        List<Rectangle2D> sorted = new ArrayList<>(inks);
        sorted.sort(Comparator.comparingDouble(Rectangle2D::getMinX));
        for (int i = 0; i < sorted.size(); i++) {
            Rectangle2D left = sorted.get(i);
            for (int k = i + 1;
                    k < sorted.size() && sorted.get(k).getMinX() < left.getMaxX();
                    k++) {
                assertThat(left.intersects(sorted.get(k)))
                        .as("%s touches %s", left, sorted.get(k))
                        .isFalse();
            }
        }
    }
}
