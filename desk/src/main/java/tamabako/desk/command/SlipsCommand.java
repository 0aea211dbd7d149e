package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tamabako.insight.slip.EventTables;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipFinder;
import tamabako.insight.slip.SlipJson;
import tamabako.problems.Attempt;
import tamabako.problems.AttemptCheck;
import tamabako.problems.json.AttemptJson;

/// `slips`: the slips behind wrong answers, one line in, one line out; or what the answers of each
/// pupil show together.
@Command(
        name = "slips",
        mixinStandardHelpOptions = true,
        description = {
            "The slips behind wrong answers: one attempt a line in, one finding a line out.",
            "With --pupils, one line for each pupil: main slip, own rates, lasting wrong rules."
        },
        footer = {
            "",
            "Examples:",
            "  echo '{\"problem\":{\"kind\":\"column\",\"rows\":[\"54\",\"-29\",\"38\"]},\"answer\":\"73\"}' |"
                    + " tamabako slips",
            "  tamabako slips --pupils attempts.jsonl",
            "",
            "Exits with 0, with 1 if a line could not be read (it is named, the rest is done), or with 2."
        })
public final class SlipsCommand implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();

    @Mixin private AttemptsFile attempts = new AttemptsFile();

    @Option(
            names = "--pupils",
            description =
                    "One line for each pupil instead of one for each attempt, after the last"
                            + " attempt. Attempts without a pupil count as one pupil's.")
    private boolean pupils;

    @Override
    public Integer call() throws IOException {
        try (BufferedReader in = attempts.open()) {
            return pupils
                    ? PupilsOfSlips.run(spec, in)
                    : LineWork.of(spec).run(in, new Finding(new SlipFinder(Rates.shipped())));
        }
    }

    private record Finding(SlipFinder finder, EventTables tables) implements LineWork.Turning {

        Finding(SlipFinder finder) {
            this(finder, new EventTables());
        }

        @Override
        public Optional<String> turn(String line) {
            Attempt attempt = AttemptCheck.checked(AttemptJson.parse(line));
            return Optional.of(
                    SlipJson.of(finder.find(tables.of(attempt.problem()), attempt)).toString());
        }

        @Override
        public Optional<String> faulty(String message) {
            return Optional.of(FaultLine.of(message));
        }
    }
}
