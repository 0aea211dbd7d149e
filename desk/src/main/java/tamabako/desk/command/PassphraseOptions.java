package tamabako.desk.command;

import java.io.Console;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import tamabako.records.keeping.Passphrase;

/// Where the passphrase of a backup comes from: a file, the environment, or whoever sits at the
/// keyboard. It is never written on the command line, where others can read it.
final class PassphraseOptions {

    private static final String VARIABLE = "TAMABAKO_BACKUP_PASSPHRASE";

    @Option(
            names = "--passphrase-file",
            paramLabel = "FILE",
            description =
                    "The file whose first line is the passphrase; without it the variable "
                            + VARIABLE
                            + " is asked, and then you are.")
    private Optional<Path> file = Optional.empty();

    /// The passphrase to lock a new backup with, typed twice where it is typed; empty where nobody
    /// can be asked, or what was typed twice is not the same.
    Optional<Passphrase> choose() throws IOException {
        Optional<String> written = written();
        if (written.isPresent()) {
            return written.map(Passphrase::choose);
        }
        Optional<String> first = ask("Passphrase for the backup: ");
        return first.isPresent() && first.equals(ask("The same once more: "))
                ? first.map(Passphrase::choose)
                : Optional.empty();
    }

    /// The passphrase to open a backup with.
    Optional<Passphrase> typed() throws IOException {
        return written().or(() -> ask("Passphrase of the backup: ")).flatMap(Passphrase::typed);
    }

    private Optional<String> written() throws IOException {
        if (file.isEmpty()) {
            return Optional.ofNullable(System.getenv(VARIABLE));
        }
        try (Stream<String> lines = Files.lines(file.get())) {
            return Optional.of(lines.findFirst().orElse(""));
        }
    }

    private static Optional<String> ask(String question) {
        Console console = System.console();
        return console == null || !console.isTerminal()
                ? Optional.empty()
                : Optional.ofNullable(console.readPassword(question)).map(String::new);
    }
}
