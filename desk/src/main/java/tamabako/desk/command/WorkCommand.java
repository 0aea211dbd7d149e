package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tamabako.desk.work.UnitRod;
import tamabako.desk.work.WorkJson;
import tamabako.desk.work.WorkText;
import tamabako.desk.work.WorkWay;
import tamabako.desk.work.Worked;
import tamabako.frame.CarryOrder;
import tamabako.frame.FrameKind;
import tamabako.frame.Habits;
import tamabako.frame.Rounding;
import tamabako.frame.SquareRootWay;
import tamabako.frame.TrialRule;
import tamabako.frame.Unworkable;
import tamabako.frame.words.Languages;
import tamabako.frame.words.StepWords;
import tamabako.problems.Terms;
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

    /// The frame kinds by their words.
    enum Kind {
        modern(FrameKind.MODERN),
        older(FrameKind.OLDER),
        suanpan(FrameKind.SUANPAN);

        private final FrameKind frame;

        Kind(FrameKind frame) {
            this.frame = frame;
        }
    }

    /// The ways of rounding by their words.
    enum Beyond {
        half_up(Rounding.HALF_UP),
        down(Rounding.DOWN);

        private final Rounding rounding;

        Beyond(Rounding rounding) {
            this.rounding = rounding;
        }

        @Override
        public String toString() {
            return name().replace('_', '-');
        }
    }

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

    @Option(
            names = "--frame",
            defaultValue = "modern",
            description = "${COMPLETION-CANDIDATES} (default modern).")
    private Kind frame = Kind.modern;

    @Option(names = "--rods", description = "Rods of the frame, 1 to 31; else as many as needed.")
    private Optional<Integer> rods = Optional.empty();

    @Option(
            names = "--unit",
            paramLabel = "LETTER or N",
            description = "The unit rod from the left, such as H or 8; else where it is usual.")
    private Optional<String> unit = Optional.empty();

    @Option(names = "--carry-first", description = "Carry before taking off the complement.")
    private boolean carryFirst;

    @Option(
            names = "--rounded-trial",
            description = "Trial digits by the divisor's first digit rounded.")
    private boolean roundedTrial;

    @Option(names = "--double-root", description = "Square roots by the double root.")
    private boolean doubleRoot;

    @Option(names = "--places", description = "Decimal places of the answer, 0 to 12.")
    private Optional<Integer> places = Optional.empty();

    @Option(
            names = "--rounding",
            description = "What is done beyond the places: ${COMPLETION-CANDIDATES}.")
    private Optional<Beyond> rounding = Optional.empty();

    @Override
    public Integer call() throws IOException {
        Working working = new Working(way(), json, language());
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
    private record Working(WorkWay way, boolean json, Locale language) implements LineWork.Turning {

        @Override
        public Optional<String> turn(String line) {
            Worked worked = way.work(ProblemLines.parse(line));
            return Optional.of(
                    json ? WorkJson.of(worked).toString() : WorkText.of(worked, language) + "\n");
        }
    }

    private WorkWay way() {
        if (places.filter(asked -> asked < 0 || asked > Terms.MOST_PLACES).isPresent()) {
            throw refuse(
                    "An answer has 0 to %d decimal places, not %d."
                            .formatted(Terms.MOST_PLACES, places.get()));
        }
        return new WorkWay(
                frame.frame,
                whole(rods),
                unit.map(this::unitRod),
                habits(),
                whole(places),
                rounding.map(beyond -> beyond.rounding));
    }

    private Habits habits() {
        Habits habits = Habits.COMMON;
        habits = carryFirst ? habits.with(CarryOrder.CARRY_THEN_REMOVE) : habits;
        habits = roundedTrial ? habits.with(TrialRule.ROUNDED_FIRST_DIGIT) : habits;
        return doubleRoot ? habits.with(SquareRootWay.DOUBLE_ROOT) : habits;
    }

    private UnitRod unitRod(String written) {
        return UnitRod.parse(written)
                .orElseThrow(() ->
                        refuse(
                                "There is no rod \"%s\". Write its letter from the left, such as H, or its number, such as 8."
                                        .formatted(written)));
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

    private static OptionalInt whole(Optional<Integer> number) {
        return number.map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    private ParameterException refuse(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
