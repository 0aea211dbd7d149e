package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tamabako.problems.grade.Grade;

/// `ready`: how ready each pupil is for the next grades.
@Command(
        name = "ready",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "How ready each pupil is: attempts as JSON lines in, one line for each pupil out.",
            "Tells the chance to pass, its band, each section, what limits and what would help.",
            "Lines of outcomes of exams among them tell how well forecasts held, and correct them."
        },
        footer = {
            "",
            "Examples:",
            "  tamabako ready --ladder abacus-one-sheet attempts.jsonl",
            "  tamabako ready --ladder abacus-by-sections --grade 5 --grade 4 attempts.jsonl",
            "",
            "Exits with 0, with 1 if a line could not be read (it is named, the rest is done), or with 2."
        })
public final class ReadyCommand implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "0..1",
            defaultValue = "-",
            paramLabel = "FILE",
            description =
                    "Attempts and outcomes as JSON lines; - for standard input (the default).")
    private String file = "-";

    @Mixin private LadderOption ladder = new LadderOption();

    @Option(
            names = "--grade",
            paramLabel = "GRADE",
            description =
                    "A grade of it, as often as there are grades to tell of; without it the next"
                            + " three of each pupil.")
    private List<String> grades = List.of();

    @Override
    public Integer call() throws IOException {
        LadderSource source = ladder.read();
        List<Grade> asked = new ArrayList<>();
        for (String grade : grades) {
            asked.add(source.grade(spec, grade));
        }
        try (BufferedReader in = Source.open(file)) {
            return PupilsReady.run(spec, in, source.ladder(), asked);
        }
    }
}
