package tamabako.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
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

    private final Terminal terminal = new Terminal();

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

        assertThat(terminal.run("paper", file.toString(), "a", "--json")).isEqualTo(2);
        assertThat(terminal.err())
                .contains("bad.yaml")
                .contains("`tamabako paper --help` tells what it takes.")
                .doesNotContain("Usage:");
    }

    private String text(Path ladder, String language) throws IOException {
        Path pdf = folder.resolve(language + ".pdf");
        assertThat(
                        terminal.run(
                                "paper",
                                ladder.toString(),
                                "step-2",
                                "--lang",
                                language,
                                "-o",
                                pdf.toString()))
                .as(terminal.err())
                .isZero();
        try (PDDocument read = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(read);
        }
    }
}
