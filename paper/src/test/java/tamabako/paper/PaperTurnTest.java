package tamabako.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tamabako.paper.wish.PaperPart;
import tamabako.paper.wish.PaperPrintWish;
import tamabako.problems.grade.file.Ladders;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperId;
import tamabako.problems.setting.PaperMade;
import tamabako.problems.setting.PaperMaker;

/// Where a paper goes on over a page, a pupil with a loose leaf still knows where he is.
class PaperTurnTest {

    private static final PaperPrintWish ENGLISH = PaperPrintWish.ENGLISH.with(PaperPart.PAPER);
    private static final PaperPrintWish JAPANESE = PaperPrintWish.JAPANESE.with(PaperPart.PAPER);

    @Test
    void aPageOnWhichASectionGoesOnNamesItBesideTheGrade() {
        Paper paper = paper("mental-one-sheet", "1");

        assertThat(page(paper, ENGLISH, 1))
                .anyMatch(line -> line.startsWith("Grade 1 · Mental columns (mitori-anzan)"));
        assertThat(page(paper, JAPANESE, 1)).anyMatch(line -> line.startsWith("1級　みとり暗算"));
    }

    @Test
    void aPageOnWhichASectionBeginsNamesTheGradeAlone() {
        assertThat(page(paper("abacus-one-sheet", "1"), ENGLISH, 1))
                .anyMatch(line -> line.startsWith("Grade 1 Name"))
                .anyMatch(line -> line.startsWith("Multiplication (kakezan)"))
                .noneMatch(line -> line.contains(" · "));
    }

    @Test
    void thirtyPlainAndThirtyAmountsAreAPageEach() {
        Paper paper = paper("dan-six-sections", "dan");
        for (PaperPrintWish wish : List.of(ENGLISH, JAPANESE)) {
            assertThat(numbers(page(paper, wish, 0))).containsExactlyElementsOf(range(1, 30));
            assertThat(numbers(page(paper, wish, 1))).containsExactlyElementsOf(range(31, 60));
        }
    }

    @Test
    void aRuleForTheAnswersNamesOnlyProblemsThatItCanMatterTo() {
        Paper paper = paper("mental-row-tables", "4");
        List<String> lines = page(paper, ENGLISH, 1);

        String note =
                lines.stream().filter(line -> line.startsWith("Nos. ")).findFirst().orElseThrow();
        List<Integer> named =
                List.of(note.substring(5, note.indexOf(" –")).split(", ")).stream()
                        .map(Integer::valueOf)
                        .toList();
        List<Integer> withDecimals =
                lines.stream()
                        .filter(line -> line.contains("×"))
                        .flatMap(line -> List.of(line.split("=")).stream())
                        .map(String::strip)
                        .filter(sum -> sum.contains("."))
                        .map(sum -> Integer.valueOf(sum.split(" ", 2)[0]))
                        .sorted()
                        .toList();
        assertThat(named).isNotEmpty().isEqualTo(withDecimals);
    }

    private static List<Integer> range(int first, int last) {
        return IntStream.rangeClosed(first, last).boxed().toList();
    }

    /// The numbers of the sums of a page.
    private static List<Integer> numbers(List<String> lines) {
        return lines.stream()
                .filter(line -> line.contains("×"))
                .flatMap(line -> List.of(line.split("=")).stream())
                .map(String::strip)
                .filter(sum -> !sum.isEmpty())
                .map(sum -> Integer.valueOf(sum.split(" ", 2)[0]))
                .sorted()
                .toList();
    }

    private static List<String> page(Paper paper, PaperPrintWish wish, int page) {
        return Pages.read(Pages.print(paper, wish)).text().get(page);
    }

    private static Paper paper(String ladder, String grade) {
        PaperMaker maker =
                PaperMaker.of(
                        ladder, Ladders.ladder(ladder).orElseThrow().grade(grade).orElseThrow());
        PaperMade made = maker.make(PaperId.draw(() -> 1), 1, List.of());
        return ((PaperMade.Found) made).paper();
    }
}
