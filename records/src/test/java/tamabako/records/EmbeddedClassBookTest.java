package tamabako.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// The class book in a file.
class EmbeddedClassBookTest extends ClassBookContract {

    @TempDir Path folder;

    @Override
    Database fresh() {
        return new Database.Embedded(folder.resolve(Identity.fresh()).resolve("book.sqlite"));
    }

    @Test
    void aFileThatIsNoClassBookIsRefusedAndLeftAlone() throws IOException {
        Path file = folder.resolve("letter.txt");
        Files.writeString(file, "Dear parents, ".repeat(100));

        assertThatThrownBy(() -> ClassBook.open(file))
                .isInstanceOf(RecordsFailure.class)
                .hasMessageContaining("letter.txt")
                .hasMessageContaining("Is it a class book");
        assertThat(Files.readString(file)).startsWith("Dear parents");
    }
}
