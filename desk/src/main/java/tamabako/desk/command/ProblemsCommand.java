package tamabako.desk.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tamabako.problems.Problem;
import tamabako.problems.csv.ProblemCsv;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.qti.QtiPackage;
import tamabako.problems.text.ProblemText;

/// `problems`: problems from one format into another.
@Command(
        name = "problems",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Turns problems from one format into another.",
        footer = {
            "",
            "Formats:",
            "  json  JSON lines, which hold everything",
            "  text  plain lines such as 54 - 29 + 38: numbers and places only",
            "  csv   a spreadsheet, one problem a line",
            "  qti   items of QTI 3 for test systems, as a zip package",
            "",
            "Examples:",
            "  tamabako problems --to csv -o sums.csv sums.jsonl",
            "  tamabako problems --to qti --title Tuesday -o tuesday.zip sums.jsonl",
            "  tamabako problems tuesday.zip > sums.jsonl",
            "",
            "Exits with 0, with 1 if a problem could not be read (it is named, the rest is done), or"
                    + " with 2."
        })
public final class ProblemsCommand implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "0..1",
            defaultValue = "-",
            paramLabel = "FILE",
            description = "The problems; - for standard input (the default).")
    private String file = "-";

    @Option(
            names = "--from",
            paramLabel = "FORMAT",
            description =
                    "${COMPLETION-CANDIDATES}; else as the name ends: .csv, .zip or .xml, all others"
                            + " as lines.")
    private Optional<ProblemFormat> from = Optional.empty();

    @Option(
            names = "--to",
            paramLabel = "FORMAT",
            description = "${COMPLETION-CANDIDATES}; else as the name ends, or json.")
    private Optional<ProblemFormat> to = Optional.empty();

    @Option(
            names = {"-o", "--output"},
            defaultValue = "-",
            paramLabel = "FILE",
            description = "The file to write; - for standard output (the default).")
    private String output = "-";

    @Option(
            names = "--title",
            defaultValue = "Tamabako",
            description = "What test systems call the test (qti).")
    private String title = "Tamabako";

    @Option(
            names = "--lang",
            defaultValue = "en",
            description = "The language that items ask in (qti): en or ja (default en).")
    private Locale language = Locale.ENGLISH;

    @Override
    public Integer call() throws IOException {
        ProblemLines read =
                ProblemLines.read(spec, file, from.orElseGet(() -> ProblemFormat.of(file)));
        List<Problem> problems = read.problems();
        if (problems.isEmpty()) {
            spec.commandLine().getErr().println("There is no problem to write.");
            return Exit.COULD_NOT_RUN;
        }
        switch (to.orElseGet(() -> ProblemFormat.of(output))) {
            case json -> write(lines(problems.stream().map(ProblemJson::line).toList()));
            case text -> write(lines(problems.stream().map(ProblemText::write).toList()));
            case csv -> write(ProblemCsv.write(problems));
            case qti ->
                    Target.write(
                            output,
                            out -> QtiZip.write(QtiPackage.files(problems, title, language), out));
        }
        return read.exit();
    }

    private static String lines(List<String> lines) {
        return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    }

    private void write(String text) throws IOException {
        if (output.equals("-")) {
            spec.commandLine().getOut().print(text);
            spec.commandLine().getOut().flush();
        } else {
            Target.write(output, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
        }
    }
}
