package tamabako.records.keeping;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import tamabako.records.ClassBook;
import tamabako.records.WholeBook;

/// Restores what an earlier version of the program kept: into a book of that version first, which
/// is then brought up to date as any book is when it is opened, and from there.
final class Earlier {

    private Earlier() {}

    static Map<String, Long> restore(
            int version, Consumer<WholeBook> source, ClassBook book, boolean replace) {
        try {
            Path folder = Files.createTempDirectory("class-book");
            try {
                Path file = folder.resolve("earlier.sqlite");
                try (ClassBook earlier = ClassBook.openAsOf(version, file)) {
                    earlier.tables().fill(false, source);
                }
                try (ClassBook today = ClassBook.open(file)) {
                    return book.tables().fill(replace, today.tables()::read);
                }
            } finally {
                remove(folder);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException("There is no room for a temporary book.", failed);
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }
}
