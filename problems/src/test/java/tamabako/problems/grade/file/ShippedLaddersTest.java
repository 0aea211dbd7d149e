package tamabako.problems.grade.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tamabako.problems.grade.Ladder;

/// The ladders that are shipped are in order.
class ShippedLaddersTest {

    private static final Path FOLDER =
            Path.of("src", "main", "resources", "tamabako", "problems", "grades");

    @Test
    void everyFileOfTheFolderIsReadWithoutMistakes() throws IOException {
        List<String> files;
        try (Stream<Path> found = Files.list(FOLDER)) {
            files = found.map(file -> file.getFileName().toString()).sorted().toList();
        }

        assertThat(LadderTexts.names().stream().map(LadderTexts::fileName).sorted())
                .isEqualTo(files);
        for (String name : LadderTexts.names()) {
            LadderFile read = LadderFile.read(LadderTexts.fileName(name), LadderTexts.text(name));
            if (read instanceof LadderFile.Mistaken(List<Mistake> mistakes)) {
                assertThat(mistakes.stream().map(m -> m.message(Locale.ENGLISH))).isEmpty();
            }
        }
    }

    @Test
    void aLadderGoesByTheNameOfItsFile() {
        assertThat(Ladders.shipped()).extracting(Ladder::id).isEqualTo(LadderTexts.names());
        for (Ladder ladder : Ladders.shipped()) {
            assertThat(Ladders.ladder(ladder.id())).contains(ladder);
        }
        assertThat(Ladders.ladder("none")).isEmpty();
    }
}
