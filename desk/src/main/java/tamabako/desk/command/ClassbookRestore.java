package tamabako.desk.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tamabako.desk.opening.PrivateFolder;
import tamabako.records.ClassBook;
import tamabako.records.keeping.Backup;
import tamabako.records.keeping.Passphrase;

/// `classbook restore`: everything back from one file.
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Puts a backup into an empty class book, or in the place of what one holds.",
            "It is counted and checked, and done whole or not at all. A demo class makes room."
        },
        footer = {
            "",
            "Examples:",
            "  tamabako classbook restore book.backup",
            "  tamabako classbook restore book.backup --replace --data lessons",
            "",
            "Exits with 0, or with 2 if it could not be restored; then nothing was changed."
        })
final class ClassbookRestore implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "BACKUP", description = "The file.")
    private String file = "-";

    @Option(names = "--replace", description = "What the class book holds may go.")
    private boolean replace;

    @Mixin private PassphraseOptions words = new PassphraseOptions();

    @Mixin private BookPlace place = new BookPlace();

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        Backup backup = Backup.read(file, Source.bytes(file));
        Optional<Passphrase> passphrase = backup.isLocked() ? words.typed() : Optional.empty();
        RowProgress progress = new RowProgress(err);
        place.folder().ifPresent(PrivateFolder::make);
        try (ClassBook book = ClassBook.open(place.database())) {
            err.println(
                    "Restored and checked: "
                            + progress.done(backup.restore(passphrase, book, replace, progress))
                            + ".");
        }
        return Exit.DONE;
    }
}
