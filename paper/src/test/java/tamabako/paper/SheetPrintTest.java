package tamabako.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import tamabako.paper.Pages.Line;
import tamabako.paper.figures.PrintedNumber;
import tamabako.paper.wish.Part;
import tamabako.paper.wish.PrintWish;
import tamabako.paper.wish.Size;
import tamabako.paper.wish.Unprintable;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Sheet;
import tamabako.problems.Terms;
import tamabako.testkit.Draw;

class SheetPrintTest {

    private static final PrintWish BOTH = PrintWish.ENGLISH.with(Part.BOTH);

    @Test
    void theSameSheetGivesTheSameBytes() {
        Sheet sheet = DrawnSheets.sheet(new Draw(7));
        assertThat(Pages.print(sheet, BOTH)).isEqualTo(Pages.print(sheet, BOTH));
    }

    @Test
    void twoSheetsHaveTwoIdentifiers() {
        byte[] one = Pages.print(DrawnSheets.sheet(new Draw(1)), BOTH);
        byte[] other = Pages.print(DrawnSheets.sheet(new Draw(2)), BOTH);
        assertThat(one).isNotEqualTo(other);
    }

    @Test
    void sheetsPrintedAtTheSameTimeDoNotDisturbEachOther() throws Exception {
        List<Sheet> sheets = new ArrayList<>();
        for (int seed = 0; seed < 12; seed++) {
            sheets.add(DrawnSheets.sheet(new Draw(seed)));
        }
        List<byte[]> alone = sheets.stream().map(sheet -> Pages.print(sheet, BOTH)).toList();
        try (var threads = Executors.newFixedThreadPool(4)) {
            List<Future<byte[]>> together = new ArrayList<>();
            for (Sheet sheet : sheets) {
                together.add(threads.submit(() -> Pages.print(sheet, BOTH)));
            }
            for (int i = 0; i < sheets.size(); i++) {
                assertThat(together.get(i).get()).isEqualTo(alone.get(i));
            }
        }
    }

    @Test
    void nameAndDateOfTheWishStandOnTheSheet() {
        Sheet sheet = DrawnSheets.columns(new Draw(1));
        PrintWish wish = PrintWish.JAPANESE.onDate("4月14日").forPupil("葵");
        assertThat(text(Pages.of(sheet, wish))).contains("葵", "4月14日", "プリント番号 c1");
    }

    @Test
    void pagesOfEachPartAreNumberedOnTheirOwn() {
        Sheet sheet = products(60);
        List<List<String>> pages = Pages.of(sheet, BOTH).text();
        assertThat(pages).hasSize(3);
        assertThat(pages.get(0)).anyMatch(line -> line.endsWith("1 / 2"));
        assertThat(pages.get(1)).anyMatch(line -> line.endsWith("2 / 2"));
        assertThat(pages.get(2)).anyMatch(line -> line.endsWith("1 / 1")).contains("Products Key");
    }

    @Test
    void manySheetsBecomeOneFileWithTheKeysTogetherAtTheEnd() throws IOException {
        List<Sheet> sheets = List.of(products(3), columns(5, 4), products(4));
        Pages pages = print(sheets, BOTH);
        assertThat(pages.pages()).hasSize(4);
        assertThat(Reader.sheet(new Pages(pages.pages().subList(1, 2)))).hasSize(5);
        assertThat(pages.text().getLast())
                .containsSubsequence(
                        "Keys of 3 sheets Key",
                        "Products · Sheet p1",
                        "1 77 2 84 3 91",
                        "Columns · Sheet c1",
                        "1 404 2 408 3 412 4 416 5 420",
                        "Products · Sheet p1",
                        "1 77 2 84 3 91 4 98");
    }

    @Test
    void aShortKeyIsNotTornApartByAPageTurn() throws IOException {
        List<Sheet> sheets = Collections.nCopies(12, products(20));
        for (PrintWish wish : List.of(BOTH, BOTH.in(Locale.JAPANESE).with(Size.LARGE))) {
            Pages keys = print(sheets, wish.with(Part.KEY));
            int headings = 0;
            for (List<Line> page : keys.pages()) {
                int here = (int) page.stream().filter(line -> line.text().contains(" p1")).count();
                assertThat(Reader.key(new Pages(List.of(page)))).hasSize(20);
                long last =
                        page.stream().filter(line -> line.text().matches("(.* )?20 210")).count();
                assertThat(last).isEqualTo(here);
                headings += here;
            }
            assertThat(headings).isEqualTo(12);
            assertThat(keys.pages().size()).isLessThan(12);
        }
    }

    @Test
    void aLongTitleAmongKeysIsCutButNotTheNumberOfItsSheet() throws IOException {
        Sheet other = new Sheet("p2", "very long title ".repeat(20), products(2).problems());
        Pages keys = print(List.of(products(2), other), BOTH.with(Part.KEY));
        assertThat(keys.text().getFirst())
                .anyMatch(line -> line.matches("very long title .*… · Sheet p2"));
    }

    private static Pages print(List<Sheet> sheets, PrintWish wish) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SheetPrint.write(sheets, wish, out);
        return Pages.read(out.toByteArray());
    }

    @Test
    void twoHundredProblemsAreAllPrinted() {
        assertThat(Reader.sheet(Pages.of(products(200), PrintWish.ENGLISH))).hasSize(200);
    }

    @Test
    void blanksInTheTitleAreBroughtToOne() {
        Sheet sheet = new Sheet("1", " Two\n\twords ", products(1).problems());
        assertThat(text(Pages.of(sheet, PrintWish.ENGLISH))).contains("Two words");
    }

    @Test
    void marksThatOnlyChooseTheFormOfAKanjiAreLeftOut() {
        Sheet sheet = new Sheet("1", "辻\udb40\udd00さん", products(1).problems());
        assertThat(text(Pages.of(sheet, PrintWish.JAPANESE))).contains("辻さん");
    }

    @Test
    void aVeryLongNameStaysOnItsLine() {
        PrintWish wish = PrintWish.ENGLISH.forPupil("Maria ".repeat(60));
        List<String> lines = Pages.of(products(1), wish).text().getFirst();
        assertThat(lines)
                .anyMatch(line -> line.startsWith("Name Maria Maria") && line.contains("…"));
    }

    @Test
    void aSheetWithoutTitleIsCalledPractice() {
        Sheet sheet = new Sheet("1", "  ", products(1).problems());
        assertThat(text(Pages.of(sheet, PrintWish.JAPANESE))).contains("練習プリント");
    }

    @Test
    void aTitleTooLongForThreeLinesIsCutVisibly() {
        Sheet sheet = new Sheet("1", "very long title ".repeat(40), products(1).problems());
        assertThat(text(Pages.of(sheet, PrintWish.ENGLISH))).contains("…").contains("Name");
    }

    @Test
    void aLanguageWithoutWordsIsPrintedInEnglish() {
        Pages pages = Pages.of(products(1), PrintWish.ENGLISH.in(Locale.FRENCH));
        assertThat(text(pages)).contains("Multiplication (kakezan)");
    }

    @Test
    void idsThatAreTooLongToPrintGiveWayToNumbers() {
        List<Problem> problems = new ArrayList<>();
        for (Problem problem : products(3).problems()) {
            problems.add(problem.withId("problem-" + problem.id()));
        }
        Sheet sheet = new Sheet("1", "Long ids", problems);
        assertThat(Reader.sheet(Pages.of(sheet, PrintWish.ENGLISH)).keySet())
                .containsExactly("1", "2", "3");
    }

    @Test
    void idsThatComeTwiceGiveWayToNumbers() {
        List<Problem> twice = new ArrayList<>(products(3).problems());
        twice.addAll(products(3).problems());
        assertThat(Reader.sheet(Pages.of(new Sheet("1", "Twice", twice), PrintWish.ENGLISH)))
                .containsOnlyKeys("1", "2", "3", "4", "5", "6");
    }

    @Test
    void fifteenColumnsOfEightRowsAreAPageWithFiguresALittleSmaller() {
        assertThat(Pages.of(columns(15, 8), PrintWish.ENGLISH).pages()).hasSize(1);
    }

    @Test
    void fifteenColumnsOfTenRowsFillTheirFirstPage() {
        Pages pages = Pages.of(columns(15, 10), PrintWish.ENGLISH);
        assertThat(Reader.sheet(new Pages(pages.pages().subList(0, 1)))).hasSize(10);
        assertThat(Reader.sheet(new Pages(pages.pages().subList(1, 2)))).hasSize(5);
    }

    private static Sheet columns(int count, int rows) {
        List<Problem> columns = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            List<BigDecimal> numbers = Collections.nCopies(rows, BigDecimal.valueOf(100L + i));
            columns.add(new Column(String.valueOf(i), numbers, Terms.PLAIN));
        }
        return new Sheet("c1", "Columns", columns);
    }

    @Test
    void nothingIsWrittenOfASheetThatCannotBePrinted() {
        BigDecimal endless = new BigDecimal("1".repeat(90));
        Sheet sheet =
                new Sheet("1", "Too long", List.of(new Column("1", List.of(endless), Terms.PLAIN)));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertThatThrownBy(() -> SheetPrint.write(sheet, BOTH, out))
                .isInstanceOf(Unprintable.class);
        assertThat(out.size()).isZero();
    }

    @Test
    void theLongestNumbersOfALongFrameArePrintedEvenLarge() {
        BigDecimal sixteen = new BigDecimal("9876543210123456");
        BigDecimal fifteen = new BigDecimal("987654321012345");
        Sheet sheet =
                new Sheet("1", "Long", List.of(new Product("1", sixteen, fifteen, Terms.PLAIN)));
        PrintWish large = BOTH.with(Size.LARGE);
        Pages pages = Pages.of(sheet, large);
        assertThat(Reader.sheet(pages)).hasSize(1);
        assertThat(text(pages)).contains(PrintedNumber.of(sixteen.multiply(fifteen)).figures());
    }

    private static Sheet products(int count) {
        List<Problem> problems = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            BigDecimal factor = BigDecimal.valueOf(10L + i);
            problems.add(
                    new Product(String.valueOf(i), factor, BigDecimal.valueOf(7), Terms.PLAIN));
        }
        return new Sheet("p1", "Products", problems);
    }

    private static String text(Pages pages) {
        return String.join(
                "\n", pages.text().stream().map(page -> String.join("\n", page)).toList());
    }
}
