package tamabako.desk;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import tamabako.desk.command.DeskCommand;
import tamabako.desk.command.MakeCommand;
import tamabako.desk.command.MarkCommand;
import tamabako.desk.command.SheetCommand;
import tamabako.desk.command.SlipsCommand;
import tamabako.desk.command.WorkCommand;

/// The program's one entry: the commands hang below it.
@Command(
        name = "tamabako",
        mixinStandardHelpOptions = true,
        version = "tamabako 0.1.0",
        description = "The soroban teacher's tool. Without a command it starts the desk.",
        subcommands = {
            DeskCommand.class,
            MakeCommand.class,
            SheetCommand.class,
            WorkCommand.class,
            MarkCommand.class,
            SlipsCommand.class,
            CommandLine.HelpCommand.class
        })
public final class Tamabako {

    private Tamabako() {}

    /// Runs one command and leaves with its exit code.
    public static void main(String[] arguments) {
        String[] asked = arguments.length == 0 ? new String[] {"desk"} : arguments;
        System.exit(new CommandLine(new Tamabako()).execute(asked));
    }
}
