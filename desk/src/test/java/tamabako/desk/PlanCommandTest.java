package tamabako.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The command `plan`: attempts in, a plan for each pupil out.
class PlanCommandTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir private Path folder;

    private final Terminal terminal = new Terminal();

    private String file() throws IOException {
        StringBuilder text = new StringBuilder();
        for (String pupil : List.of("Aoi", "Ren")) {
            for (int i = 0; i < 15; i++) {
                text.append(
                        "{\"problem\":{\"kind\":\"product\",\"factors\":[\"%d\",\"7\"]},\"answer\":\"%d\",\"seconds\":9,\"pupil\":\"%s\"}\n"
                                .formatted(23 + i, (23 + i) * 7, pupil));
            }
        }
        text.append("no attempt\n");
        return Files.writeString(folder.resolve("attempts.jsonl"), text).toString();
    }

    @Test
    void everyPupilHasAPlanOfItsOwnWithReasons() throws IOException {
        String file = file();
        String[] asked = {
            "plan",
            "--ladder",
            "abacus-one-sheet",
            "--grade",
            "8",
            "--count",
            "6",
            "--days",
            "30",
            "--seed",
            "5",
            file
        };

        assertThat(terminal.run(asked)).isEqualTo(1);

        assertThat(terminal.err()).contains("seed 5").contains("line 31: ");
        String first = terminal.out();
        List<JsonNode> lines = new ArrayList<>();
        for (String line : first.lines().toList()) {
            lines.add(JSON.readTree(line));
        }
        assertThat(lines).hasSize(2);
        for (JsonNode line : lines) {
            assertThat(line.get("problems")).hasSize(6);
            assertThat(line.get("reasons")).isNotEmpty();
            assertThat(line.get("reasons").get(0).get("says").get("ja").asText()).contains("題");
            assertThat(line.get("reviews").get(0).asInt()).isBetween(3, 6);
        }
        assertThat(lines.get(0).get("problems")).isNotEqualTo(lines.get(1).get("problems"));

        terminal.run(asked);
        assertThat(terminal.out()).isEqualTo(first);
    }

    @Test
    void theSheetsOfAllPupilsAreOneFileWithTheirKeysTogether() throws IOException {
        Path pdf = folder.resolve("tuesday.pdf");
        String[] asked = {
            "plan",
            "--ladder",
            "abacus-one-sheet",
            "--grade",
            "8",
            "--sheets",
            pdf.toString(),
            file()
        };

        assertThat(terminal.run(asked)).isEqualTo(1);

        assertThat(terminal.out().lines()).hasSize(2);
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            String text = new PDFTextStripper().getText(document);
            assertThat(document.getNumberOfPages()).isEqualTo(3);
            assertThat(text).contains("Aoi", "Ren", "Keys of 2 sheets");
        }
    }

    @Test
    void moreThanCanBePlannedIsRefused() throws IOException {
        assertThat(
                        terminal.run(
                                "plan",
                                "--ladder",
                                "abacus-one-sheet",
                                "--grade",
                                "8",
                                "--count",
                                "900",
                                file()))
                .isEqualTo(2);

        assertThat(terminal.err()).contains("1 to 200 problems");
    }
}
