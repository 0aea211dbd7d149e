package tamabako.desk.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/// Cases that the program and the page script both read.
final class Vectors {

    private Vectors() {}

    /// The words of each line of `src/test/vectors/name` that is no comment.
    static List<List<String>> read(String name) {
        try {
            return Files.readAllLines(Path.of("src", "test", "vectors", name)).stream()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> List.of(line.split(" ", -1)))
                    .toList();
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot read the vectors of " + name + ".", failed);
        }
    }
}
