package tamabako.desk.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tamabako.records.ClassBook;
import tamabako.records.keeping.Move;

/// `classbook move`: from one database to another.
@Command(
        name = "move",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Copies everything from one class book to another, and checks every row.",
            "What is in the first one stays there. Close the desk meanwhile."
        },
        footer = {
            "",
            "Example:",
            "  tamabako classbook move --from lessons/classbook.sqlite"
                    + " --to postgresql://teacher@db.example:5432/classbook",
            "",
            "Exits with 0, or with 2 if it could not be moved; then nothing was changed."
        })
final class ClassbookMove implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--from",
            paramLabel = "ADDRESS",
            required = true,
            description = "postgresql://user@host:5432/name, or a file.")
    private String from = "";

    @Option(
            names = "--to",
            paramLabel = "ADDRESS",
            required = true,
            description = "postgresql://user@host:5432/name, or a file.")
    private String to = "";

    @Option(
            names = "--from-password-file",
            paramLabel = "FILE",
            description = "Its first line; else the variable TAMABAKO_DATABASE_PASSWORD.")
    private Optional<Path> fromPassword = Optional.empty();

    @Option(
            names = "--to-password-file",
            paramLabel = "FILE",
            description = "Its first line; else the variable TAMABAKO_DATABASE_PASSWORD.")
    private Optional<Path> toPassword = Optional.empty();

    @Option(names = "--replace", description = "What the second class book holds may go.")
    private boolean replace;

    @Override
    public Integer call() {
        RowProgress progress = new RowProgress(spec.commandLine().getErr());
        try (ClassBook source = BookPlace.existing(BookPlace.at(from, fromPassword));
                ClassBook target = ClassBook.open(BookPlace.at(to, toPassword))) {
            String done = progress.done(Move.all(source, target, replace, progress));
            spec.commandLine().getErr().println("Moved and checked: " + done + ".");
        }
        return Exit.DONE;
    }
}
