package tamabako.desk.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import tamabako.desk.TestFolder;
import tamabako.desk.opening.OpenDesk;

/// The class book that a new desk begins with. Filling it takes longer than most walks, so that it
/// is filled once in a JVM, by a desk that opens for the first time, and copied from then on.
final class DemoBook {

    private static Optional<byte[]> filled = Optional.empty();

    private DemoBook() {}

    /// Puts such a book into a folder that has none.
    static synchronized void putInto(Path folder) {
        try {
            if (filled.isEmpty()) {
                filled = Optional.of(fill());
            }
            Files.write(OpenDesk.bookIn(folder), filled.get());
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static byte[] fill() throws IOException {
        try (TestFolder folder = new TestFolder()) {
            OpenDesk.open(folder.path(), false, InetAddress.getLoopbackAddress(), 0).close();
            return Files.readAllBytes(OpenDesk.bookIn(folder.path()));
        }
    }
}
