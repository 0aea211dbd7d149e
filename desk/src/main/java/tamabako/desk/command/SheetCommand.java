package tamabako.desk.command;

import java.io.IOException;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tamabako.paper.SheetPrint;
import tamabako.paper.wish.Part;
import tamabako.paper.wish.PrintWish;
import tamabako.paper.wish.Size;
import tamabako.problems.Sheet;
import tamabako.records.Identity;

/// `sheet`: problems as a printed sheet with its key.
@Command(
        name = "sheet",
        mixinStandardHelpOptions = true,
        description = "Prints problems as an A4 sheet with its key (PDF).",
        footer = {
            "",
            "Example:",
            "  tamabako make --rows 5 --digits 2 --count 10 | tamabako sheet --title Tuesday -o"
                    + " tuesday.pdf",
            "",
            "Exits with 0, with 1 if a line could not be read (it is named; the sheet has the rest), or"
                    + " with 2."
        })
public final class SheetCommand implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();

    @Mixin private ProblemsFile problems = new ProblemsFile();

    @Option(
            names = {"-o", "--output"},
            defaultValue = "-",
            paramLabel = "PDF",
            description = "The PDF to write; - for standard output (the default).")
    private String output = "-";

    @Option(names = "--title", defaultValue = "", description = "The title on the sheet.")
    private String title = "";

    @Option(
            names = "--id",
            defaultValue = "",
            description = "The name printed at the foot; a fresh one if not given.")
    private String id = "";

    @Option(
            names = "--part",
            defaultValue = "both",
            description = "What to print: sheet, key or both (default both).")
    private Part part = Part.BOTH;

    @Option(
            names = "--size",
            defaultValue = "normal",
            description = "normal or large (default normal).")
    private Size size = Size.NORMAL;

    @Option(names = "--lang", defaultValue = "en", description = "en or ja (default en).")
    private Locale language = Locale.ENGLISH;

    @Override
    public Integer call() throws IOException {
        ProblemLines read = problems.read();
        if (read.problems().isEmpty()) {
            spec.commandLine().getErr().println("There is no problem to print.");
            return Exit.COULD_NOT_RUN;
        }
        Sheet sheet = new Sheet(id.isEmpty() ? Identity.readable() : id, title, read.problems());
        PrintWish wish = PrintWish.ENGLISH.in(language).with(part).with(size);
        Target.write(output, out -> SheetPrint.write(sheet, wish, out));
        return read.exit();
    }
}
