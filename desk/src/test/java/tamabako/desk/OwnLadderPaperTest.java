package tamabako.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tamabako.problems.grade.file.LadderTexts;

/// Papers of a ladder that a teacher wrote.
class OwnLadderPaperTest {

    @TempDir private Path folder;

    private final StringWriter err = new StringWriter();

    @Test
    void theyTellItsNameAndNotTheNameOfItsFile() throws IOException {
        String yaml =
                LadderTexts.text("first-steps")
                        .replace("ladder: first-steps", "ladder: ours")
                        .replace("First steps, one technique after another", "Our first year")
                        .replace("はじめてのそろばん（珠の動かし方の順）", "一年目のそろばん");
        Path file = Files.writeString(folder.resolve("ours.yaml"), yaml);

        assertThat(text(file, "en")).contains("Our first year").doesNotContain("ours");
        assertThat(text(file, "ja")).contains("一年目のそろばん").doesNotContain("ours");
    }

    @Test
    void whatIsWrongWithItsFileIsToldWithoutTheWholeHelp() throws IOException {
        Path file = Files.writeString(folder.resolve("bad.yaml"), "ladder: bad\n");

        assertThat(run("paper", file.toString(), "a", "--json")).isEqualTo(2);
        assertThat(err.toString())
                .contains("bad.yaml")
                .contains("`tamabako paper --help` tells what it takes.")
                .doesNotContain("Usage:");
    }

    private String text(Path ladder, String language) throws IOException {
        Path pdf = folder.resolve(language + ".pdf");
        assertThat(
                        run(
                                "paper",
                                ladder.toString(),
                                "step-2",
                                "--lang",
                                language,
                                "-o",
                                pdf.toString()))
                .as(err.toString())
                .isZero();
        try (PDDocument read = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(read);
        }
    }

    private int run(String... arguments) {
        err.getBuffer().setLength(0);
        return Tamabako.commandLine()
                .setOut(new PrintWriter(new StringWriter(), true))
                .setErr(new PrintWriter(err, true))
                .execute(arguments);
    }
}
