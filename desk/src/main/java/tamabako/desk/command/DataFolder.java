package tamabako.desk.command;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/// The option that names the folder of the class book.
final class DataFolder {

    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            description =
                    "The folder of the class book; without it $XDG_DATA_HOME/tamabako, or"
                            + " ~/.tamabako where that is not set.")
    private Optional<Path> data = Optional.empty();

    /// The folder, the usual one where none was named.
    Path path() {
        return data.orElseGet(() -> {
            String shared = System.getenv("XDG_DATA_HOME");
            return shared == null || shared.isBlank()
                    ? Path.of(System.getProperty("user.home"), ".tamabako")
                    : Path.of(shared, "tamabako");
        });
    }
}
