package tamabako.desk.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tamabako.records.ClassBook;
import tamabako.records.keeping.Backup;
import tamabako.records.keeping.Passphrase;

/// `classbook backup`: everything into one file.
@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Writes everything in the class book into one file, locked with a passphrase.",
            "The desk may be open meanwhile. Without the passphrase nobody can read the file again."
        },
        footer = {
            "",
            "Examples:",
            "  tamabako classbook backup -o book.backup",
            "  tamabako classbook backup -o book.backup --passphrase-file words.txt",
            "",
            "Exits with 0, or with 2."
        })
final class ClassbookBackup implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            required = true,
            description = "Where it is written; - for standard output.")
    private String output = "";

    @Option(names = "--plain", description = "Locks nothing: whoever has the file can read it.")
    private boolean plain;

    @Mixin private PassphraseOptions words = new PassphraseOptions();

    @Mixin private BookPlace place = new BookPlace();

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        Optional<Passphrase> passphrase = plain ? Optional.empty() : words.choose();
        if (!plain && passphrase.isEmpty()) {
            err.println(
                    "There is no passphrase, or it was typed in two ways. Give one with"
                            + " --passphrase-file or in TAMABAKO_BACKUP_PASSPHRASE, or say --plain.");
            return Exit.COULD_NOT_RUN;
        }
        RowProgress progress = new RowProgress(err);
        Map<String, Long> counts = new HashMap<>();
        try (ClassBook book = place.openExisting()) {
            Target.write(
                    output,
                    out ->
                            counts.putAll(
                                    Backup.write(book, passphrase, Instant.now(), progress, out)));
        }
        err.println("Backed up: " + progress.done(counts) + ".");
        return Exit.DONE;
    }
}
