package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tamabako.desk.work.WorkJson;
import tamabako.desk.work.WorkText;
import tamabako.desk.work.WorkWay;
import tamabako.desk.work.Worked;
import tamabako.frame.Unworkable;
import tamabako.frame.words.Languages;
import tamabako.frame.words.StepWords;
import tamabako.problems.Unreadable;

/// `work`: a sum worked bead by bead.
@Command(
        name = "work",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Works a sum bead by bead: every state of the frame, and a sentence for it.",
        footer = {
            "",
            "Examples:",
            "  tamabako work \"54 - 29 + 38\"",
            "  tamabako work --lang ja \"1225 / 35\"",
            "  tamabako work --json - < problems.jsonl",
            "",
            "A sum that begins with a minus sign goes after --, as in: tamabako work -- \"-95 + 118\"",
            "Exits with 0, with 1 if a sum could not be read or worked (it is named, the rest is"
                    + " done), or with 2."
        })
public final class WorkCommand implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "0..*",
            paramLabel = "SUM",
            description =
                    "The sum: 54 - 29 + 38, 306 x 4, 1225 / 35, √729. - reads one sum or problem a"
                            + " line from standard input.")
    private List<String> sum = List.of();

    @Option(
            names = "--from",
            paramLabel = "FILE",
            description = "Reads one sum or problem a line from a file.")
    private Optional<String> file = Optional.empty();

    @Option(names = "--json", description = "One JSON object a line instead of text.")
    private boolean json;

    @Option(
            names = "--lang",
            defaultValue = "en",
            description = "The language of the text: en, ja.")
    private String language = "en";

    @Mixin private WorkOptions options = new WorkOptions();

    @Override
    public Integer call() throws IOException {
        Working working = new Working(options.way(), json, new WorkText(language()));
        boolean lines = file.isPresent() || sum.equals(List.of("-"));
        if (sum.isEmpty() == file.isEmpty()) {
            throw refuse("Give one sum, or - for standard input, or --from FILE.");
        }
        if (!lines) {
            return one(working, String.join(" ", sum));
        }
        try (BufferedReader in = Source.open(file.orElse("-"))) {
            return LineWork.of(spec).run(in, working);
        } catch (NoSuchFileException missing) {
            throw refuse("There is no file %s to read.".formatted(missing.getFile()));
        }
    }

    private int one(Working working, String line) {
        try {
            working.turn(line).ifPresent(spec.commandLine().getOut()::println);
            return Exit.DONE;
        } catch (Unreadable unreadable) {
            spec.commandLine().getErr().println(unreadable.message(language()));
        } catch (Unworkable unworkable) {
            StepWords words = StepWords.of(language());
            spec.commandLine().getErr().println(words.why(unworkable.reason()));
        }
        return Exit.SOME_WRONG;
    }

    /// Works the problem on one line and tells it.
    private record Working(WorkWay way, boolean json, WorkText text) implements LineWork.Turning {

        @Override
        public Optional<String> turn(String line) {
            Worked worked = way.work(ProblemLines.parse(line));
            return Optional.of(json ? WorkJson.of(worked).toString() : text.of(worked) + "\n");
        }
    }

    private Locale language() {
        return Languages.all().stream()
                .filter(known -> known.getLanguage().equals(language))
                .findFirst()
                .orElseThrow(() ->
                        refuse(
                                "The language \"%s\" is not known. Choose en or ja."
                                        .formatted(language)));
    }

    private ParameterException refuse(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
