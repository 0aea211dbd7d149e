package tamabako.desk.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import tamabako.problems.Problem;
import tamabako.problems.Unreadable;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.making.Made;
import tamabako.problems.making.Maker;
import tamabako.problems.making.Wish;
import tamabako.problems.making.json.WishJson;
import tamabako.problems.setting.PaperMade;
import tamabako.problems.text.ProblemText;
import tamabako.problems.words.ProblemWords;

/// `make`: problems from a wish.
@Command(
        name = "make",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Makes problems from a wish: JSON lines.",
        footer = {
            "",
            "Techniques: direct, five-complement, ten-complement, ten-with-five.",
            "",
            "A wish can be kept as a file of these options, read by @FILE, or as a JSON object, read by",
            "--wish FILE, which can ask for more; docs/formats.md tells its keys.",
            "",
            "Examples:",
            "  tamabako make @tuesday.wish",
            "  tamabako make --wish tuesday.json --count 20",
            "  tamabako make --ladder abacus-one-sheet --grade 3 --section columns",
            "  tamabako make --rows 5 --digits 2 --minus 2 --techniques direct,five-complement",
            "  tamabako make --kind product --multiplicand 3 --multiplier 2 --count 20 --seed 7",
            "",
            "Exits with 0, with 1 if there are no such problems (the reason is told), or with 2."
        })
public final class MakeCommand implements Callable<Integer> {

    /// The kinds of problem that can be made.
    enum Kind {
        column,
        product,
        quotient,
        root
    }

    @Spec private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--kind",
            defaultValue = "column",
            description = "${COMPLETION-CANDIDATES} (default column).")
    private Kind kind = Kind.column;

    @Option(names = "--count", defaultValue = "10", description = "How many (default 10).")
    private int count;

    @Option(
            names = "--seed",
            description = "The same seed makes the same problems; a fresh one if not given.")
    private Optional<Long> seed = Optional.empty();

    @Mixin private ColumnOptions columns = new ColumnOptions();

    @Mixin private FactorOptions factors = new FactorOptions();

    @Option(
            names = "--wish",
            paramLabel = "FILE",
            description = "A wish as a JSON object; - for standard input.")
    private Optional<String> wishFile = Optional.empty();

    @Mixin private SectionOptions section = new SectionOptions();

    @Option(names = "--text", description = "Plain lines instead of JSON lines.")
    private boolean text;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        long first = seed.orElseGet(System::nanoTime);
        if (section.isAsked()) {
            return section(first);
        }
        Made made = Maker.make(wish(), count, first);
        ProblemWords words = ProblemWords.of(Locale.ENGLISH);
        return switch (made) {
            case Made.Found(List<Problem> problems, long used) -> {
                err.println("seed " + used);
                problems.forEach(this::print);
                yield Exit.DONE;
            }
            case Made.Impossible impossible -> {
                err.println(words.say(impossible.reason()));
                impossible.nearest().ifPresent(near -> err.println("Nearest: " + written(near)));
                yield Exit.SOME_WRONG;
            }
            case Made.NotFound(_, Made.Reason reason) -> {
                err.println(words.say(reason));
                yield Exit.SOME_WRONG;
            }
        };
    }

    private int section(long first) throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        return switch (section.make(first)) {
            case PaperMade.Found made -> {
                err.println("seed " + first);
                made.paper().problems().forEach(this::print);
                yield Exit.DONE;
            }
            case PaperMade.NotMade(PaperMade.Reason reason) -> {
                err.println(ProblemWords.of(Locale.ENGLISH).say(reason));
                yield Exit.SOME_WRONG;
            }
        };
    }

    /// A wish as it was asked: by a file, or by options.
    private String written(Wish near) {
        return wishFile.isPresent() ? WishJson.line(near) : "tamabako make " + WishOptions.of(near);
    }

    private void print(Problem problem) {
        spec.commandLine()
                .getOut()
                .println(text ? ProblemText.write(problem) : ProblemJson.line(problem));
    }

    private Wish wish() throws IOException {
        if (wishFile.isPresent()) {
            String text = new String(Source.bytes(wishFile.get()), StandardCharsets.UTF_8);
            try {
                return WishJson.parse(text.replace('\n', ' ').replace('\r', ' '));
            } catch (Unreadable fault) {
                throw refuse(wishFile.get() + ": " + fault.getMessage());
            }
        }
        return switch (kind) {
            case column -> columns.wish();
            case product -> factors.product();
            case quotient -> factors.quotient();
            case root -> factors.root();
        };
    }

    private ParameterException refuse(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
