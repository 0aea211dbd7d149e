package tamabako.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tamabako.desk.opening.OpenDesk;
import tamabako.problems.setting.SettersCustoms;
import tamabako.records.ClassBook;
import tamabako.records.KeptPapers;

/// What the command `paper` leaves behind in the class book, and the customs it may leave out.
class PaperCommandTest {

    @TempDir private Path folder;

    private final Terminal terminal = new Terminal();

    @Test
    void keptPapersAreFoundInTheClassBookByTheirPrintedNumbers() throws IOException {
        OpenDesk.open(folder, false, InetAddress.getLoopbackAddress(), 0).close();

        assertThat(
                        paper(
                                "--forms",
                                "2",
                                "--count",
                                "3",
                                "--no-customs",
                                "--json",
                                "--keep",
                                "--data",
                                folder.toString()))
                .as(terminal.err())
                .isZero();

        List<JsonNode> lines = terminal.lines();
        assertThat(lines).hasSize(6);
        try (ClassBook book = ClassBook.open(OpenDesk.bookIn(folder))) {
            assertThat(book.papers().latest(10)).hasSize(3).allMatch(entry -> entry.forms() == 2);
            for (int i = 0; i < 6; i++) {
                String number = lines.get(i).get("paper").asText();
                KeptPapers kept =
                        book.papers().find(book.papers().setOf(number).orElseThrow()).orElseThrow();

                assertThat(kept.papers()).hasSize(2);
                assertThat(kept.papers().get(i % 2).id()).isEqualTo(number);
                assertThat(kept.papers())
                        .allMatch(paper -> paper.customs() == SettersCustoms.LEFT_OUT);
            }
        }
    }

    @Test
    void aClassBookThatIsNotThereIsNotMadeByTheWay() {
        Path elsewhere = folder.resolve("elsewhere");

        assertThat(paper("--keep", "--data", elsewhere.toString())).isEqualTo(2);

        assertThat(terminal.err())
                .contains("There is no class book in " + elsewhere)
                .contains("Start the desk once");
        assertThat(elsewhere).doesNotExist();
    }

    @Test
    void papersKeepTheCustomsUnlessTheyAreLeftOut() throws IOException {
        assertThat(paper("--seed", "4", "--json")).isZero();
        JsonNode usual = terminal.lines().getFirst();
        assertThat(paper("--seed", "4", "--json", "--no-customs")).isZero();
        JsonNode without = terminal.lines().getFirst();

        assertThat(usual.has("customs")).isFalse();
        assertThat(without.get("customs").asBoolean(true)).isFalse();
        assertThat(without.get("sections")).isNotEqualTo(usual.get("sections"));
    }

    private int paper(String... options) {
        return terminal.run(List.of("paper", "abacus-one-sheet", "6"), options);
    }
}
