package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tamabako.problems.json.AttemptJson;
import tamabako.problems.marking.WritingRules;

/// `mark`: answers against problems.
@Command(
        name = "mark",
        mixinStandardHelpOptions = true,
        description = {
            "Marks answers by the published writing rules.",
            "Give attempts as JSON lines, or a file of problems and a CSV file of answers."
        },
        footer = {
            "",
            "The CSV file begins with a line of column names: id and answer, and pupil if you like.",
            "",
            "Examples:",
            "  tamabako mark attempts.jsonl",
            "  tamabako mark sums.jsonl answers.csv",
            "",
            "Exits with 0, with 1 if a line could not be read (it is named, the rest is done), or with 2."
        })
public final class MarkCommand implements Callable<Integer> {

    /// How strictly the form of an answer is looked at.
    enum Rules {
        strict,
        easy
    }

    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(
            index = "0",
            arity = "0..1",
            defaultValue = "-",
            paramLabel = "ATTEMPTS or PROBLEMS",
            description = "JSON lines; - for standard input (the default).")
    private String first = "-";

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "ANSWERS",
            description = "Answers as CSV; - for standard input.")
    private Optional<String> answers = Optional.empty();

    @Option(
            names = "--rules",
            defaultValue = "strict",
            description =
                    "strict: as exams mark, commas needed; easy: commas not needed (default"
                            + " ${DEFAULT-VALUE}).")
    private Rules rules = Rules.strict;

    @Override
    public Integer call() throws IOException {
        MarkLine marking =
                new MarkLine(rules == Rules.strict ? WritingRules.STRICT : WritingRules.EASY);
        if (answers.isPresent()) {
            return AnswerFile.mark(spec, first, answers.get(), marking);
        }
        try (BufferedReader in = Source.open(first)) {
            return LineWork.of(spec).run(in, new Marking(marking));
        }
    }

    private record Marking(MarkLine marking) implements LineWork.Turning {

        @Override
        public Optional<String> turn(String line) {
            return Optional.of(marking.of(AttemptJson.parse(line)));
        }

        @Override
        public Optional<String> faulty(String message) {
            return Optional.of(FaultLine.of(message));
        }
    }
}
