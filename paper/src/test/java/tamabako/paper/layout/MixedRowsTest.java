package tamabako.paper.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import tamabako.paper.layout.MixedGrid.Slot;
import tamabako.paper.pdf.PrintFonts;
import tamabako.paper.wish.PageSize;
import tamabako.paper.wish.Size;
import tamabako.paper.words.PrintWords;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Terms;

/// How cells of many kinds fill rows and pages.
class MixedRowsTest {

    private static final int MOST = 100;

    @Test
    void anyNumberOfProblemsHasItsPlaceOnEveryPageAndAtEverySize() {
        for (PageSize page : PageSize.values()) {
            for (Size size : Size.values()) {
                Setting setting = setting(page, size);
                for (int count = 2; count <= MOST; count += 7) {
                    List<Decoration> cells = cells(laid(count, setting));
                    assertThat(cells).hasSize(count).allSatisfy(cell -> inside(cell, setting));
                }
            }
        }
    }

    @Test
    void aLargerPageHoldsMore() {
        assertThat(pages(90, setting(PageSize.B4, Size.NORMAL)))
                .isLessThan(pages(90, setting(PageSize.A4, Size.NORMAL)));
    }

    @Test
    void besideAHighColumnShortProblemsThatFollowOneAnotherShareAPlace() {
        MixedGrid grid =
                grid(List.of(column("1", 10), product("2"), product("3"), column("4", 10)));
        assertThat(labels(grid)).containsExactly(List.of("1", "2 3", "4"));
    }

    @Test
    void problemsThatDoNotFollowOneAnotherNeverShareAPlace() {
        MixedGrid grid = grid(List.of(product("1"), column("2", 10), product("3"), column("4", 3)));
        assertThat(labels(grid)).containsExactly(List.of("1", "2", "3 4"));
    }

    @Test
    void amongShortProblemsNoneShareAPlace() {
        MixedGrid grid = grid(List.of(product("1"), product("2"), product("3")));
        assertThat(labels(grid)).containsExactly(List.of("1", "2", "3"));
    }

    @Test
    void beginnersHaveBoxesAsWideAsOnOtherSheetsWherePagesAllow() {
        Setting setting = setting(PageSize.A4, Size.NORMAL);
        List<Problem> problems = new ArrayList<>();
        for (int i = 1; i <= 20; i++) {
            problems.add(i % 4 == 0 ? product(String.valueOf(i)) : column(String.valueOf(i), 3));
        }
        Laid laid = laid(problems, setting);
        assertThat(laid.pages()).isEqualTo(1);
        assertThat(cells(laid))
                .allSatisfy(cell ->
                        assertThat(((Mark.Box) cell.marks().getFirst()).width())
                                .isGreaterThan(setting.across() / 5 - 0.1));
    }

    private static MixedGrid grid(List<Problem> problems) {
        Setting setting = setting(PageSize.A4, Size.NORMAL);
        Section section = new Section(Numbered.of(problems));
        return new MixedGrid(MixedCells.of(section, setting), 4, 12, setting);
    }

    /// What stands in each place of each row.
    private static List<List<String>> labels(MixedGrid grid) {
        List<List<String>> rows = new ArrayList<>();
        for (List<Slot> row : grid.rows()) {
            rows.add(
                    row.stream()
                            .map(slot ->
                                    String.join(
                                            " ",
                                            slot.cells().stream().map(MixedCell::label).toList()))
                            .toList());
        }
        return rows;
    }

    private static List<Decoration> cells(Laid laid) {
        return laid.decorations().stream()
                .filter(decoration ->
                        decoration.marks().getFirst() instanceof Mark.Box box
                                && box.ink() == Ink.HAIR)
                .toList();
    }

    private static void inside(Decoration cell, Setting setting) {
        Mark.Box box = (Mark.Box) cell.marks().getFirst();
        Page page = setting.page();
        assertThat(box.x()).isGreaterThan(page.left() - 0.1);
        assertThat(box.y()).isGreaterThan(page.top() - 0.1);
        assertThat(box.x() + box.width()).isLessThan(page.right() + 0.1);
        assertThat(box.y() + box.height()).isLessThan(page.bottom() + 0.1);
    }

    private static int pages(int count, Setting setting) {
        return laid(count, setting).pages();
    }

    private static Laid laid(int count, Setting setting) {
        List<Problem> problems = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            String label = String.valueOf(i);
            problems.add(i % 2 == 1 ? column(label, 1 + i % 10) : product(label));
        }
        return laid(problems, setting);
    }

    private static Laid laid(List<Problem> problems, Setting setting) {
        Section section = new Section(Numbered.of(problems));
        Block block =
                new Block(
                        SectionHead.of(section, false, setting),
                        new MixedRows(MixedCells.of(section, setting), setting));
        Head head = new PaperHead(new Title("Mixed", "", setting), List.of(), List.of(), setting);
        return new Layout(head, new Foot("m1", setting), List.of(block), setting).lay(0);
    }

    private static Setting setting(PageSize page, Size size) {
        return new Setting(PrintWords.of(Locale.ENGLISH), size, Page.of(page), PrintFonts.SHARED);
    }

    private static Problem column(String label, int rows) {
        List<BigDecimal> numbers = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            numbers.add(BigDecimal.valueOf(40 + i));
        }
        return new Column(label, numbers, Terms.PLAIN);
    }

    private static Problem product(String label) {
        return new Product(label, BigDecimal.valueOf(38), BigDecimal.valueOf(47), Terms.PLAIN);
    }
}
