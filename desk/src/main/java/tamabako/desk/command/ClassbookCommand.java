package tamabako.desk.command;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/// `classbook`: what is done with the class book as a whole.
@Command(
        name = "classbook",
        mixinStandardHelpOptions = true,
        description = "Rosters in and lists out, backup and restore, moving, erasing a pupil.",
        subcommands = {
            ClassbookImport.class,
            ClassbookExport.class,
            ClassbookBackup.class,
            ClassbookRestore.class,
            ClassbookMove.class,
            ClassbookErase.class,
            CommandLine.HelpCommand.class
        },
        footer = {
            "",
            "Examples:",
            "  tamabako classbook import tuesday.csv",
            "  tamabako classbook backup -o book.backup",
            "  tamabako classbook help restore"
        })
public final class ClassbookCommand implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        spec.commandLine().usage(spec.commandLine().getErr());
        return Exit.COULD_NOT_RUN;
    }
}
