package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/// `mastery`: what each pupil has mastered, from their attempts.
@Command(
        name = "mastery",
        mixinStandardHelpOptions = true,
        description = {
            "What each pupil has mastered: attempts in, one line out for each pupil.",
            "How often each move of the hand goes wrong, how sure that is, and whether it is"
                    + " seldom enough for a grade (--ladder, --grade) or for the problems that the"
                    + " pupil works."
        },
        footer = {
            "",
            "Examples:",
            "  tamabako mastery attempts.jsonl",
            "  tamabako mastery --ladder abacus-by-sections --grade 3 attempts.jsonl",
            "",
            "Exits with 0, with 1 if a line could not be read (it is named, the rest is done), or with 2."
        })
public final class MasteryCommand implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();

    @Mixin private AttemptsFile attempts = new AttemptsFile();

    @Mixin private DemandOptions demand = new DemandOptions();

    @Override
    public Integer call() throws IOException {
        MasteryOfPupils pupils = new MasteryOfPupils(demand.demand());
        try (BufferedReader in = attempts.open()) {
            int exit = LineWork.of(spec).gather(in, pupils);
            pupils.lines().forEach(spec.commandLine().getOut()::println);
            spec.commandLine().getOut().flush();
            return exit;
        }
    }
}
