package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import tamabako.insight.plan.PlanWish;
import tamabako.problems.grade.Grade;

/// `plan`: what each pupil is to practise next.
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "What each pupil is to practise next: attempts as JSON lines in, one plan for each pupil"
                    + " out.",
            "Each has problems of its own, in their order, and the reasons in words."
        },
        footer = {
            "",
            "Examples:",
            "  tamabako plan --ladder abacus-one-sheet --grade 3 --count 12 attempts.jsonl",
            "  tamabako plan --ladder abacus-one-sheet --grade 3 --days 20 --seed 7 attempts.jsonl",
            "  tamabako plan --ladder abacus-one-sheet --grade 8 --sheets tuesday.pdf attempts.jsonl",
            "",
            "Exits with 0, with 1 if a line could not be read (it is named, the rest is done), or with 2."
        })
public final class PlanCommand implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();

    @Mixin private AttemptsFile attempts = new AttemptsFile();

    @Mixin private LadderOption ladder = new LadderOption();

    @Option(
            names = "--grade",
            required = true,
            paramLabel = "GRADE",
            description = "The grade of it that is practised for.")
    private String grade = "";

    @Option(
            names = "--count",
            defaultValue = "20",
            description = "How many problems each pupil gets (default 20).")
    private int count;

    @Option(
            names = "--days",
            paramLabel = "DAYS",
            description = "How many days there are until the exam; tells when to practise again.")
    private Optional<Integer> days = Optional.empty();

    @Option(
            names = "--seed",
            description = "The same seed makes the same plans; a fresh one if not given.")
    private Optional<Long> seed = Optional.empty();

    @Mixin private PlanSheets sheets = new PlanSheets();

    @Override
    public Integer call() throws IOException {
        LadderSource source = ladder.read();
        Grade asked = source.grade(spec, grade);
        if (count < 1 || count > PlanWish.MOST) {
            throw refuse("A plan has 1 to %d problems, not %d.".formatted(PlanWish.MOST, count));
        }
        if (days.isPresent() && days.get() < 0) {
            throw refuse("--days counts from today on: 0 or more, not %d.".formatted(days.get()));
        }
        long first = seed.orElseGet(System::nanoTime);
        spec.commandLine().getErr().println("seed " + first);
        OptionalInt until = days.map(OptionalInt::of).orElseGet(OptionalInt::empty);
        PlanWish wish = new PlanWish(count, until, Set.of(), first);
        try (BufferedReader in = attempts.open()) {
            return PlansOfPupils.run(spec, in, source.ladder().id(), asked, wish, sheets);
        }
    }

    private ParameterException refuse(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
