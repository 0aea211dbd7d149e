package tamabako.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tamabako.paper.figures.PrintedNumber;
import tamabako.paper.wish.PageSize;
import tamabako.paper.wish.PaperPart;
import tamabako.paper.wish.PaperPrintWish;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.file.Ladders;
import tamabako.problems.setting.FormReport;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperSection;
import tamabako.testkit.Draw;

class PaperPrintTest {

    private static final PaperPrintWish PAPER = PaperPrintWish.ENGLISH.with(PaperPart.PAPER);
    private static final Paper AT_ONCE = DrawnPapers.atOnce(new Draw(5), 1);
    private static final Paper BY_SECTION = DrawnPapers.bySection(new Draw(6), 2);

    @Test
    void thePaperTellsGradeTimeMarksPassFormAndId() {
        assertThat(text(AT_ONCE, PAPER))
                .contains(
                        "Grade 3",
                        "Abacus test",
                        "Form B · 30 min · full marks 300 · pass: 240 points",
                        "Paper 7KMX-2P9T-0001",
                        "/ 300");
        assertThat(text(AT_ONCE, PAPER.in(Locale.JAPANESE)))
                .contains("3級", "B問題", "制限時間30分", "300点満点", "合格点240点", "問題番号 7KMX-2P9T-0001");
    }

    @Test
    void theTeachersTitleStandsBeforeTheGrade() {
        assertThat(text(AT_ONCE, PAPER.titled("Spring\n test").onDate("14 April")))
                .contains("Spring test, Grade 3", "14 April");
    }

    @Test
    void sectionsWithATimeOfTheirOwnBeginAPageWithAHeadOfTheirOwn() {
        List<List<String>> pages = Pages.read(Pages.print(BY_SECTION, PAPER)).text();
        long heads = pages.stream().filter(page -> page.contains("Grade 3")).count();
        assertThat(heads).isEqualTo(BY_SECTION.sections().size());
        assertThat(text(BY_SECTION, PAPER)).contains("7 min", "10 min", "3 min 30 s");
    }

    @Test
    void tenPlainAndTenAmountsStandSideBySide() {
        for (int i = 0; i < 10; i++) {
            TextPosition plain = first(AT_ONCE, (11 + i) + " ");
            TextPosition amount = first(AT_ONCE, (21 + i) + " ¥");
            assertThat(amount.getYDirAdj()).isEqualTo(plain.getYDirAdj());
            assertThat(amount.getXDirAdj()).isGreaterThan(plain.getXDirAdj() + 200);
        }
    }

    @Test
    void noPageTurnTearsTenAndTenApart() {
        Ladder ladder = Ladders.ladder("abacus-one-sheet").orElseThrow();
        for (Grade grade : ladder.grades()) {
            Paper paper = GradePapers.of(ladder, grade, new Draw(8));
            for (PaperSection section : paper.sections()) {
                List<Problem> problems = section.problems();
                boolean halves =
                        problems.getFirst().terms().unit().isEmpty()
                                && problems.getLast().terms().unit().isPresent();
                if (halves) {
                    String first = problems.getFirst().id() + " ";
                    String last = problems.getLast().id() + " ¥";
                    assertThat(Pages.read(Pages.print(paper, PAPER)).text())
                            .as("grade " + grade.id())
                            .anyMatch(page ->
                                    page.stream().anyMatch(l -> l.startsWith(first))
                                            && page.stream().anyMatch(l -> l.startsWith(last)));
                }
            }
        }
    }

    @Test
    void whatIsCalledStandsOnlyInTheScript() {
        Paper called = GradePapers.only(BY_SECTION, 6);
        Column first = (Column) called.problems().getFirst();
        String paper = text(called, PAPER);
        String script = text(called, PaperPrintWish.JAPANESE.with(PaperPart.SCRIPT));
        for (BigDecimal row : first.rows()) {
            assertThat(paper).doesNotContain(PrintedNumber.of(row).figures());
            assertThat(script).contains(PrintedNumber.of(row).figures());
        }
        assertThat(script).contains("願いましては", PrintedNumber.of(first.answer().value()).figures());
    }

    @Test
    void theScriptSaysWhereAddingTurnsToTakingAndBack() {
        Paper called = GradePapers.only(BY_SECTION, 6);
        int turns = 0;
        for (Problem problem : called.problems()) {
            List<BigDecimal> rows = ((Column) problem).rows();
            for (int i = 1; i < rows.size(); i++) {
                turns += rows.get(i).signum() < 0 && rows.get(i - 1).signum() > 0 ? 1 : 0;
            }
        }
        String script = text(called, PaperPrintWish.JAPANESE.with(PaperPart.SCRIPT));
        // One more in the line that tells how a column is called.
        assertThat(script.split("引いては", -1)).hasSize(turns + 2);
    }

    @Test
    void cutPagesOfAPadStackInTheOrderOfItsLeaves() {
        Paper pad = GradePapers.only(BY_SECTION, 4);
        List<PadPages.Leaf> leaves =
                PadPages.leaves(Pages.read(Pages.print(pad, PAPER.with(PaperPart.PADS))));
        int pages = leaves.stream().mapToInt(PadPages.Leaf::page).max().orElseThrow() + 1;
        List<PadPages.Leaf> stacked = new ArrayList<>(leaves);
        // Cut, then laid on one another: top left, top right, lower left, lower right.
        stacked.sort(
                Comparator.comparingDouble(PadPages.Leaf::below)
                        .thenComparingDouble(PadPages.Leaf::right)
                        .thenComparingInt(PadPages.Leaf::page));
        assertThat(stacked.stream().map(PadPages.Leaf::number).toList())
                .isEqualTo(IntStream.rangeClosed(1, 18).boxed().toList());
        assertThat(pages).isEqualTo(5);
        for (PadPages.Leaf leaf : stacked) {
            assertThat(leaf.amounts())
                    .isEqualTo(
                            pad.sections()
                                    .getFirst()
                                    .pad()
                                    .orElseThrow()
                                    .leaves()
                                    .get(leaf.number() - 1));
        }
    }

    @Test
    void leavesOfAPadAreThirteenByEightAndAHalfCentimetresApart() {
        List<PadPages.Leaf> leaves =
                PadPages.leaves(
                        Pages.read(
                                Pages.print(
                                        GradePapers.only(BY_SECTION, 4),
                                        PAPER.with(PaperPart.PADS).on(PageSize.LETTER))));
        double millimetre = 72 / 25.4;
        assertThat(leaves.get(1).right() - leaves.get(0).right())
                .isCloseTo(130 * millimetre, within(0.1));
        assertThat(leaves.get(2).below() - leaves.get(0).below())
                .isCloseTo(85 * millimetre, within(0.1));
    }

    @Test
    void theKeySaysHonestlyWhereFiguresAreUnconfirmedAndThePaperDoesNot() {
        String note = "Some figures of this format are unconfirmed";
        assertThat(text(AT_ONCE, PAPER)).doesNotContain(note);
        assertThat(text(AT_ONCE, PAPER.with(PaperPart.KEY))).contains(note);
        assertThat(text(AT_ONCE, PAPER.with(PaperPart.MARKING))).contains(note);
    }

    @Test
    void theMarkingSheetOfAPaperThatIsScoredListsTheRanks() {
        String marking = text(BY_SECTION, PaperPrintWish.JAPANESE.with(PaperPart.MARKING));
        assertThat(marking).contains("初段 100点以上", "10段 280点以上", "最も低い種目の得点により認定");
    }

    @Test
    void everyFormHasItsFiguresInTheReport() throws IOException {
        List<Paper> forms =
                IntStream.range(0, 10).mapToObj(i -> DrawnPapers.atOnce(new Draw(i), i)).toList();
        FormReport report = FormReport.of(forms);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        FormReportPrint.write(report, AT_ONCE.grade(), PAPER, out);
        String text = joined(Pages.read(out.toByteArray()));
        for (FormReport.FormLoad form : report.forms()) {
            assertThat(text)
                    .contains(
                            "Form " + (char) ('A' + form.form() - 1),
                            String.format(Locale.ROOT, "%,d", form.whole().effort().strokes()));
        }
        assertThat(text)
                .contains(
                        String.format(Locale.ROOT, "%.1f%%", report.spreadOfStrokes() * 100),
                        "Quotients");
    }

    @Test
    void manyPapersBecomeOneFilePartAfterPartWithProgress() throws IOException {
        List<Paper> papers =
                IntStream.range(0, 3).mapToObj(i -> DrawnPapers.atOnce(new Draw(i), i)).toList();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        List<String> heard = new ArrayList<>();
        PaperPrint.write(
                papers,
                PAPER.with(PaperPart.PAPER, PaperPart.KEY),
                out,
                (done, of) -> heard.add(done + "/" + of));
        assertThat(heard).containsExactly("1/6", "2/6", "3/6", "4/6", "5/6", "6/6");
        List<String> ids =
                Pages.read(out.toByteArray()).text().stream()
                        .map(page -> String.join(" ", page).replaceAll(".*T-(\\d+).*", "$1"))
                        .toList();
        assertThat(ids)
                .containsExactly(
                        "0000", "0000", "0001", "0001", "0002", "0002", "0000", "0001", "0002");
    }

    @Test
    void manyPapersBecomeManyFilesNamedByTheirIds(@TempDir Path folder) throws IOException {
        List<Paper> papers =
                IntStream.range(0, 3).mapToObj(i -> DrawnPapers.atOnce(new Draw(i), i)).toList();
        PaperPrint.writeEach(papers, PAPER, folder.resolve("new"), Progress.UNHEARD);
        for (Paper paper : papers) {
            byte[] file = Files.readAllBytes(folder.resolve("new").resolve(paper.id() + ".pdf"));
            assertThat(file).isEqualTo(Pages.print(paper, PAPER));
        }
    }

    @Test
    void twoPapersOfOneIdAreNotWrittenOverEachOther(@TempDir Path folder) {
        assertThatThrownBy(() ->
                        PaperPrint.writeEach(
                                List.of(AT_ONCE, AT_ONCE), PAPER, folder, Progress.UNHEARD))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void thePrintedFileDependsOnNothingButPaperAndWish() {
        assertThat(Pages.print(AT_ONCE, PAPER)).isEqualTo(Pages.print(AT_ONCE, PAPER));
        assertThat(Pages.print(AT_ONCE, PAPER))
                .isNotEqualTo(Pages.print(DrawnPapers.atOnce(new Draw(5), 2), PAPER));
    }

    @Test
    void aPartThatNoPaperHasIsNoFile() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertThatThrownBy(
                        () -> PaperPrint.write(List.of(AT_ONCE), PAPER.with(PaperPart.PADS), out))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("PADS");
        assertThat(out.size()).isZero();
    }

    /// The first character of the line that starts so.
    private static TextPosition first(Paper paper, String start) {
        return Pages.read(Pages.print(paper, PAPER)).pages().stream()
                .flatMap(List::stream)
                .filter(line -> line.text().startsWith(start))
                .findFirst()
                .orElseThrow()
                .positions()
                .getFirst();
    }

    private static String text(Paper paper, PaperPrintWish wish) {
        return joined(Pages.read(Pages.print(paper, wish)));
    }

    private static String joined(Pages pages) {
        return String.join(
                "\n", pages.text().stream().map(page -> String.join("\n", page)).toList());
    }
}
