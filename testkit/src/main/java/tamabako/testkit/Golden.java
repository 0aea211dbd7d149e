package tamabako.testkit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/// What people read is kept as files beside the tests and compared whole.
///
/// `-Dgolden.rewrite=true` writes the files anew, and still fails the run, so that a rewrite is
/// always looked at.
public final class Golden {

    private Golden() {}

    /// Asserts that `text` is what `src/test/golden/name` holds.
    public static void assertGolden(String name, String text) {
        Path file = Path.of("src", "test", "golden", name);
        try {
            if (Boolean.getBoolean("golden.rewrite")) {
                Files.createDirectories(file.toAbsolutePath().getParent());
                Files.writeString(file, text);
                throw new AssertionError(
                        "Wrote " + file + ": look at it, then run again without -Dgolden.rewrite.");
            }
            assertThat(text).as(file.toString()).isEqualTo(Files.readString(file));
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot read " + file + ".", failed);
        }
    }
}
