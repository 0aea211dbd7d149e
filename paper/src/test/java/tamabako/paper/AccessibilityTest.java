package tamabako.paper;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import tamabako.paper.wish.PageSize;
import tamabako.paper.wish.PaperPart;
import tamabako.paper.wish.PaperPrintWish;
import tamabako.paper.wish.Part;
import tamabako.paper.wish.PrintWish;
import tamabako.paper.wish.Size;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Sheet;
import tamabako.problems.Terms;
import tamabako.problems.setting.FormReport;
import tamabako.problems.setting.Paper;
import tamabako.testkit.Draw;

/// Whether a screen reader can read the files: checked by veraPDF, the reference checker of
/// PDF/UA-1, and by reading the structure tree.
class AccessibilityTest {

    private static final Sheet MIXED =
            new Sheet(
                    "m1",
                    "Mixed 総合 & more",
                    List.of(
                            new Column("1", List.of(n("54"), n("-29"), n("1038")), Terms.PLAIN),
                            new Column("2", List.of(n("7.5"), n("0.25")), Terms.PLAIN),
                            new Product("3", n("306"), n("4"), Terms.PLAIN),
                            new Quotient("4", n("1226"), n("35"), Terms.PLAIN),
                            new Root("5", 2, n("729"), Terms.PLAIN),
                            new Root("6", 3, n("1728"), Terms.PLAIN)));

    /// The same and more, so that kinds alternate, some of it in the head.
    private static final Sheet ALTERNATING =
            new Sheet(
                    "m2",
                    "Alternating 交互",
                    List.of(
                            new Column("1", List.of(n("54"), n("-29"), n("1038")), Terms.PLAIN),
                            new Product("2", n("306"), n("4"), Terms.PLAIN),
                            new Column(
                                    "3",
                                    List.of(n("7"), n("2")),
                                    Terms.PLAIN.withMode(Mode.MENTAL)),
                            new Quotient("4", n("1226"), n("35"), Terms.PLAIN),
                            new Root("5", 2, n("729"), Terms.PLAIN),
                            new Column("6", List.of(n("7.5"), n("0.25")), Terms.PLAIN)));

    @BeforeAll
    static void readTheRules() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    @Test
    void everyPartInEveryLanguageAndSizeKeepsTheRulesOfPdfUa1() throws Exception {
        for (PrintWish wish : wishes()) {
            assertThat(brokenRules(Pages.print(MIXED, wish))).as("%s", wish).isEmpty();
            assertThat(brokenRules(Pages.print(ALTERNATING, wish))).as("%s", wish).isEmpty();
        }
    }

    @Test
    void theSheetsOfAClassWithTheirKeysKeepTheRulesOfPdfUa1() throws Exception {
        var out = new ByteArrayOutputStream();
        SheetPrint.write(
                List.of(ALTERNATING, MIXED, ALTERNATING), PrintWish.JAPANESE.with(Part.BOTH), out);
        assertThat(brokenRules(out.toByteArray())).isEmpty();
    }

    @Test
    void everyPartOfAPaperInEveryLanguageSizeAndFormatKeepsTheRulesOfPdfUa1() throws Exception {
        for (PaperPrintWish wish :
                List.of(
                        PaperPrintWish.ENGLISH,
                        PaperPrintWish.JAPANESE.on(PageSize.B4),
                        PaperPrintWish.JAPANESE.with(Size.LARGE).onDate("4月14日"),
                        PaperPrintWish.ENGLISH.on(PageSize.LETTER).titled("Spring & <summer>"),
                        PaperPrintWish.ENGLISH.with(PaperPart.PADS))) {
            Paper paper = DrawnPapers.bySection(new Draw(3), 1);
            assertThat(brokenRules(Pages.print(paper, wish))).as("%s", wish).isEmpty();
        }
        Paper paper = DrawnPapers.atOnce(new Draw(4), 2);
        assertThat(brokenRules(Pages.print(paper, PaperPrintWish.JAPANESE))).isEmpty();
    }

    @Test
    void theReportOfTheFormsKeepsTheRulesOfPdfUa1() throws Exception {
        Paper paper = DrawnPapers.atOnce(new Draw(4), 2);
        var out = new ByteArrayOutputStream();
        FormReportPrint.write(
                FormReport.of(List.of(paper, DrawnPapers.atOnce(new Draw(5), 3))),
                paper.grade(),
                PaperPrintWish.JAPANESE,
                out);
        assertThat(brokenRules(out.toByteArray())).isEmpty();
    }

    @Test
    void aScreenReaderReadsAStoryInOnePieceAndTheLinesOfAPadInTheirOrder() throws IOException {
        Paper paper = DrawnPapers.bySection(new Draw(3), 1);
        Paper stories = GradePapers.only(paper, 5);
        String pieces =
                "A harbour shop orders \\d+ crates of dried fish at ¥[\\d,]+ a crate for the";
        assertThat(StructureReader.read(Pages.print(stories, PaperPrintWish.ENGLISH)))
                .anyMatch(line ->
                        line.matches("TD " + pieces + " autumn market\\. How much must it pay.*"));
        Paper pads = GradePapers.only(paper, 4);
        assertThat(
                        StructureReader.read(
                                Pages.print(pads, PaperPrintWish.ENGLISH.with(PaperPart.PADS))))
                .startsWith("P Paper 7KMX-2P9T-0001 Leaf 1", "Table", "TH Row 1");
    }

    @Test
    void theCheckerDoesFindBrokenRules() throws Exception {
        byte[] file = Pages.print(MIXED, PrintWish.ENGLISH);
        try (PDDocument document = Loader.loadPDF(file)) {
            document.getDocumentCatalog().setMetadata(null);
            var out = new ByteArrayOutputStream();
            document.save(out);
            assertThat(brokenRules(out.toByteArray())).isNotEmpty();
        }
    }

    @Test
    void qpdfOpensEveryFileWithoutComplaint(@TempDir Path folder) throws Exception {
        Assumptions.assumeTrue(isInstalled("qpdf"), "qpdf is not installed: not checked with it.");
        for (PrintWish wish : wishes()) {
            checkWithQpdf(Files.write(folder.resolve("m1.pdf"), Pages.print(MIXED, wish)));
            checkWithQpdf(Files.write(folder.resolve("m2.pdf"), Pages.print(ALTERNATING, wish)));
        }
    }

    private static void checkWithQpdf(Path file) throws Exception {
        Process qpdf =
                new ProcessBuilder("qpdf", "--check", file.toString())
                        .redirectErrorStream(true)
                        .start();
        String said = new String(qpdf.getInputStream().readAllBytes(), UTF_8);
        assertThat(qpdf.waitFor()).as(said).isZero();
    }

    @Test
    void aScreenReaderReadsKindsThatAlternateInTheirOrderUnderOneHeading() throws IOException {
        assertThat(StructureReader.read(Pages.print(ALTERNATING, PrintWish.ENGLISH)))
                .containsExactly(
                        "H1 Alternating 交互",
                        "P Name",
                        "P Date",
                        "P Time",
                        "P Score / 6",
                        "H2 Mixed problems",
                        "P Nos. 4\u20135 \u2013 Write the remainder after the r.",
                        "Table",
                        "TH Column No. 1",
                        "TD 54",
                        "TD \u221229",
                        "TD 1,038",
                        "TD",
                        "Table",
                        "TH Column No. 2",
                        "TD 306×4=",
                        "TD",
                        "Table",
                        "TH Column No. 3 mental",
                        "TD 7",
                        "TD 2",
                        "TD",
                        "Table",
                        "TH Column No. 4",
                        "TD 1,226÷35=",
                        "TD r",
                        "Table",
                        "TH Column No. 5",
                        "TD √729=",
                        "TD r",
                        "Table",
                        "TH Column No. 6",
                        "TD 7.5",
                        "TD 0.25",
                        "TD");
    }

    @Test
    void aScreenReaderReadsColumnsDownwardAndListsLineByLine() throws IOException {
        assertThat(StructureReader.read(Pages.print(MIXED, PrintWish.ENGLISH)))
                .containsExactly(
                        "H1 Mixed 総合 & more",
                        "P Name",
                        "P Date",
                        "P Time",
                        "P Score / 6",
                        "H2 Columns (mitorizan)",
                        "Table",
                        "TH Column No. 1",
                        "TD 54",
                        "TD \u221229",
                        "TD 1,038",
                        "TD",
                        "Table",
                        "TH Column No. 2",
                        "TD 7.5",
                        "TD 0.25",
                        "TD",
                        "H2 Multiplication (kakezan)",
                        "Table",
                        "TH Row 3",
                        "TD 306×4=",
                        "TD",
                        "H2 Division (warizan)",
                        "P Write the remainder after the r.",
                        "Table",
                        "TH Row 4",
                        "TD 1,226÷35=",
                        "TD r",
                        "H2 Roots (kaihō)",
                        "Table",
                        "TH Row 5",
                        "TD √729=",
                        "TD",
                        "Table",
                        "TH Row 6",
                        "TD ∛1,728=",
                        "TD");
    }

    private static List<PrintWish> wishes() {
        List<PrintWish> wishes = new ArrayList<>();
        for (PrintWish language : List.of(PrintWish.ENGLISH, PrintWish.JAPANESE)) {
            for (Part part : Part.values()) {
                wishes.add(language.with(part));
                wishes.add(language.with(part).with(Size.LARGE).onDate("4月14日").forPupil("葵"));
            }
        }
        return wishes;
    }

    private static List<String> brokenRules(byte[] file) throws Exception {
        PDFAFlavour flavour = PDFAFlavour.PDFUA_1;
        try (PDFAParser parser =
                        Foundries.defaultInstance()
                                .createParser(new ByteArrayInputStream(file), flavour);
                PDFAValidator validator =
                        Foundries.defaultInstance().createValidator(flavour, false)) {
            return validator.validate(parser).getTestAssertions().stream()
                    .filter(each -> each.getStatus() == TestAssertion.Status.FAILED)
                    .map(each -> each.getRuleId() + " " + each.getMessage())
                    .distinct()
                    .toList();
        }
    }

    private static boolean isInstalled(String program) {
        return Stream.of(System.getenv("PATH").split(":"))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }

    private static BigDecimal n(String figures) {
        return new BigDecimal(figures);
    }
}
