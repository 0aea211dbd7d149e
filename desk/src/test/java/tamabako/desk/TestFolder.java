package tamabako.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/// A folder of its own, for as long as something in a test needs it.
public record TestFolder(Path path) implements AutoCloseable {

    /// A new and empty one.
    public TestFolder() {
        this(make());
    }

    private static Path make() {
        try {
            return Files.createTempDirectory("desk");
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /// Takes it away with all that is in it.
    @Override
    public void close() {
        try (Stream<Path> all = Files.walk(path)) {
            for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(one);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
