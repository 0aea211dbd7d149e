package tamabako.paper;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tamabako.paper.Pages.Line;
import tamabako.paper.Reader.Asked;
import tamabako.paper.Reader.Told;
import tamabako.paper.layout.Laid;
import tamabako.paper.layout.SheetLayout;
import tamabako.paper.pdf.PrintFonts;
import tamabako.paper.wish.PageSize;
import tamabako.paper.wish.Part;
import tamabako.paper.wish.PrintWish;
import tamabako.problems.Column;
import tamabako.problems.PadLine;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Sheet;
import tamabako.problems.Story;
import tamabako.problems.Terms;
import tamabako.testkit.Draw;

/// Sheets on which kinds alternate, as next practice plans them, read back from the files.
class MixedSheetTest {

    private static final int SHEETS = 200;
    private static final PrintWish KEY = PrintWish.ENGLISH.with(Part.KEY);
    private static final Pattern BEAD = Pattern.compile("No\\. (\\d+)( ?(mental|called|暗算|読上))?");

    @Test
    void theKeyAnswersWhatStandsOnTheSheetUnderTheSameNumbersInTheirOrder() {
        forSeeds(
                SHEETS,
                draw -> {
                    Sheet sheet = DrawnSheets.mixed(draw);
                    Pages problems = Pages.of(sheet, DrawnSheets.wish(draw, Part.SHEET));
                    Pages answers = Pages.of(sheet, DrawnSheets.wish(draw, Part.KEY));
                    Map<String, Asked> asked = Reader.sheet(problems);
                    Map<String, Told> told = Reader.key(answers);
                    List<String> ids = sheet.problems().stream().map(Problem::id).toList();
                    assertThat(told.keySet()).containsExactlyElementsOf(ids);
                    assertThat(asked.keySet()).containsExactlyInAnyOrderElementsOf(ids);
                    for (Problem problem : sheet.problems()) {
                        Asked read = requireNonNull(asked.get(problem.id()));
                        assertThat(read.numbers())
                                .as("%s", problem)
                                .usingElementComparator(BigDecimal::compareTo)
                                .containsExactlyElementsOf(numbers(problem));
                        Reworked.check(problem, read, requireNonNull(told.get(problem.id())));
                    }
                });
    }

    @Test
    void theNumbersRunInTheOrderOfTheSheetWhereKindsAlternate() {
        forSeeds(
                60,
                draw -> {
                    Sheet sheet = DrawnSheets.mixed(draw);
                    Pages pages = Pages.of(sheet, DrawnSheets.wish(draw, Part.SHEET));
                    List<String> beads =
                            pages.text().stream()
                                    .flatMap(List::stream)
                                    .map(BEAD::matcher)
                                    .filter(Matcher::matches)
                                    .map(bead -> bead.group(1))
                                    .toList();
                    if (sheet.problems().size() > 4) {
                        assertThat(beads)
                                .containsExactlyElementsOf(
                                        sheet.problems().stream().map(Problem::id).toList());
                    }
                });
    }

    @Test
    void unitsStandUnderUnitsInEveryColumn() {
        forSeeds(
                60,
                draw -> {
                    Sheet sheet = DrawnSheets.mixed(draw);
                    Pages pages = Pages.of(sheet, DrawnSheets.wish(draw, Part.SHEET));
                    int columns = 0;
                    for (List<Line> page : pages.pages()) {
                        for (int i = 0; i < page.size(); i++) {
                            List<Line> rows = Reader.rows(page, i + 1);
                            if (page.get(i).text().startsWith("No.") && !rows.isEmpty()) {
                                columns++;
                                Placed.unitsUnderUnits(rows);
                            }
                        }
                    }
                    assertThat(columns)
                            .isEqualTo(
                                    sheet.problems().stream()
                                            .filter(Column.class::isInstance)
                                            .count());
                });
    }

    @Test
    void nothingLeavesThePrintAreaAndNoTwoCharactersTouch() {
        forSeeds(
                60,
                draw -> {
                    Sheet sheet = DrawnSheets.mixed(draw);
                    Pages pages = Pages.of(sheet, DrawnSheets.wish(draw, Part.BOTH));
                    Placed.insideAndApart(pages, PageSize.A4);
                });
    }

    @Test
    void twentyProblemsAsPlannedForABeginnerAreOnePageAndTheirKeyIsOne() {
        for (PrintWish wish : List.of(PrintWish.ENGLISH, PrintWish.JAPANESE)) {
            assertThat(Pages.of(planned(20), wish.with(Part.SHEET)).pages()).hasSize(1);
            assertThat(Pages.of(planned(20), wish.with(Part.KEY)).pages()).hasSize(1);
        }
    }

    @Test
    void theNextPracticeOfAClassIsOneFileOfAPageForEachPupil() throws IOException {
        List<Sheet> sheets = IntStream.range(0, 12).mapToObj(_ -> planned(20)).toList();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SheetPrint.write(sheets, PrintWish.JAPANESE.with(Part.SHEET), out);
        Pages pages = Pages.read(out.toByteArray());
        assertThat(pages.pages())
                .hasSize(12)
                .allSatisfy(page -> assertThat(Reader.sheet(new Pages(List.of(page)))).hasSize(20));
    }

    @Test
    void linesOfASlipPadAndStoriesMayStandBetweenSums() {
        Problem pad =
                new Column(
                        "2",
                        List.of(BigDecimal.valueOf(1200), BigDecimal.valueOf(345)),
                        Terms.PLAIN.withTold(new PadLine(3, 1, 2)));
        Problem story =
                new Product(
                        "4",
                        BigDecimal.valueOf(12),
                        BigDecimal.valueOf(7),
                        Terms.PLAIN.withTold(
                                new Story(Map.of("en", "How many are 12 rows of 7?"), List.of())));
        List<Problem> sums = planned(3).problems();
        Sheet sheet =
                new Sheet(
                        "p2",
                        "All told",
                        List.of(
                                sums.getFirst(),
                                pad,
                                sums.getLast().withId("3"),
                                story,
                                sums.getFirst().withId("5")));
        List<List<String>> pages = Pages.of(sheet, PrintWish.ENGLISH.with(Part.BOTH)).text();
        assertThat(pages).as("sheet, leaves, key").hasSize(3);
        assertThat(pages.getFirst())
                .containsSubsequence(
                        "No. 1",
                        "No. 2",
                        "Line 3",
                        "leaves 1–2",
                        "No. 3",
                        "4 How many are 12 rows of 7?",
                        "No. 5");
        assertThat(String.join(" ", pages.get(1))).contains("1,200", "345");
        Told told = requireNonNull(Reader.key(Pages.of(sheet, KEY)).get("4"));
        assertThat(told.value()).isEqualTo("84");
    }

    @Test
    void everyProblemStandsInACellOfItsOwn() {
        forSeeds(
                60,
                draw -> {
                    Sheet sheet = DrawnSheets.mixed(draw);
                    PrintWish wish = DrawnSheets.wish(draw, Part.SHEET);
                    Laid laid = SheetLayout.ofSheet(sheet, wish, PrintFonts.SHARED, 0);
                    List<MixedPlaces.Cell> cells = MixedPlaces.cells(laid);
                    if (sheet.problems().size() > 4) {
                        assertThat(cells).isNotEmpty();
                        assertThat(MixedPlaces.cellsOfProblems(laid, cells))
                                .as("each problem in one cell, each cell with one problem")
                                .containsExactlyElementsOf(cells);
                        Placed.assertApart(MixedPlaces.insides(cells));
                    }
                });
    }

    /// Eight rows of two digits, products of three digits by one, and quotients in turn.
    private static Sheet planned(int count) {
        Draw draw = new Draw(11);
        List<Problem> problems = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            String id = String.valueOf(i);
            problems.add(
                    switch (i % 4) {
                        case 0 ->
                                new Quotient(
                                        id,
                                        BigDecimal.valueOf(7L * draw.between(11, 99)),
                                        BigDecimal.valueOf(7),
                                        Terms.PLAIN);
                        case 2 ->
                                new Product(
                                        id,
                                        BigDecimal.valueOf(draw.between(100, 999)),
                                        BigDecimal.valueOf(draw.between(2, 9)),
                                        Terms.PLAIN);
                        default ->
                                new Column(
                                        id,
                                        IntStream.range(0, 8)
                                                .mapToObj(_ ->
                                                        BigDecimal.valueOf(draw.between(10, 99)))
                                                .toList(),
                                        Terms.PLAIN);
                    });
        }
        return new Sheet("p1", "Practice", problems);
    }

    private static List<BigDecimal> numbers(Problem problem) {
        return switch (problem) {
            case Column(_, var rows, _) -> rows;
            case Product(_, var first, var second, _) -> List.of(first, second);
            case Quotient(_, var first, var second, _) -> List.of(first, second);
            case Root(_, _, var of, _) -> List.of(of);
        };
    }
}
