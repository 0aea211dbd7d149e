package tamabako.desk;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import tamabako.desk.command.CallCommand;
import tamabako.desk.command.ClassbookCommand;
import tamabako.desk.command.DeskCommand;
import tamabako.desk.command.LaddersCommand;
import tamabako.desk.command.MakeCommand;
import tamabako.desk.command.MarkCommand;
import tamabako.desk.command.MasteryCommand;
import tamabako.desk.command.PaperCommand;
import tamabako.desk.command.PlanCommand;
import tamabako.desk.command.ProblemsCommand;
import tamabako.desk.command.ReadyCommand;
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
            CallCommand.class,
            ProblemsCommand.class,
            PaperCommand.class,
            LaddersCommand.class,
            WorkCommand.class,
            MarkCommand.class,
            SlipsCommand.class,
            MasteryCommand.class,
            ReadyCommand.class,
            PlanCommand.class,
            ClassbookCommand.class,
            CommandLine.HelpCommand.class
        })
public final class Tamabako {

    private Tamabako() {}

    /// Runs one command and leaves with its exit code.
    public static void main(String[] arguments) {
        PrintWriter out = utf8(FileDescriptor.out, false);
        int exit =
                commandLine()
                        .setOut(out)
                        .setErr(utf8(FileDescriptor.err, true))
                        .execute(arguments.length == 0 ? new String[] {"desk"} : arguments);
        out.flush();
        System.exit(exit);
    }

    /// The command line with all its commands.
    static CommandLine commandLine() {
        return new CommandLine(new Tamabako())
                .registerConverter(Locale.class, Locale::forLanguageTag)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler((wrong, _) -> {
                    CommandLine line = wrong.getCommandLine();
                    line.getErr().println(wrong.getMessage());
                    CommandLine.UnmatchedArgumentException.printSuggestions(wrong, line.getErr());
                    line.getErr()
                            .println(
                                    "`%s --help` tells what it takes."
                                            .formatted(line.getCommandSpec().qualifiedName()));
                    return line.getCommandSpec().exitCodeOnInvalidInput();
                })
                .setExecutionExceptionHandler((failed, line, _) -> {
                    line.getErr().println(Trouble.of(failed));
                    return line.getCommandSpec().exitCodeOnInvalidInput();
                });
    }

    /// What is written is UTF-8 whatever the terminal says, as the formats promise.
    private static PrintWriter utf8(FileDescriptor where, boolean eachLine) {
        return new PrintWriter(new FileOutputStream(where), eachLine, StandardCharsets.UTF_8);
    }
}
