package tamabako.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// What the desk does with the book, in a file.
class EmbeddedDeskWorkTest extends DeskWorkContract {

    @TempDir Path folder;

    @Override
    Database fresh() {
        return new Database.Embedded(folder.resolve(Identity.fresh()).resolve("book.sqlite"));
    }

    @Test
    void noByteOfAnErasedPupilIsLeftInTheFiles() throws IOException {
        Path home = folder.resolve("home");
        try (ClassBook book = ClassBook.open(home.resolve("book.sqlite"))) {
            Group group = Group.of("Tuesday");
            Pupil gone = new Pupil(Identity.fresh(), group.id(), "Quillwort", Locale.ROOT, false);
            book.groups().keep(group);
            book.pupils().keep(gone);
            book.notes().keep(Note.of(gone.id(), ClassBookContract.TUESDAY, "Quillwort came."));
            assertThat(bytes(home)).contains("Quillwort");

            book.pupils().erase(gone.id());

            assertThat(bytes(home)).doesNotContain("Quillwort", gone.id()).contains("Tuesday");
        }
    }

    private static String bytes(Path folder) throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                all.append(Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return all.toString();
    }
}
