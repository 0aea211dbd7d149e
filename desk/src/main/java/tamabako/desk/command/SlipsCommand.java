package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipFinder;
import tamabako.insight.slip.SlipJson;
import tamabako.problems.Attempt;
import tamabako.problems.json.AttemptJson;

/// `slips`: the slips behind wrong answers, one line in, one line out.
@Command(
        name = "slips",
        mixinStandardHelpOptions = true,
        description =
                "The slips behind wrong answers: one attempt a line in, one finding a line out.",
        footer = {
            "",
            "Example:",
            "  echo '{\"problem\":{\"kind\":\"column\",\"rows\":[\"54\",\"-29\",\"38\"]},\"answer\":\"73\"}' |"
                    + " tamabako slips",
            "",
            "Exits with 0, with 1 if a line could not be read (it is named, the rest is done), or with 2."
        })
public final class SlipsCommand implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "0..1",
            defaultValue = "-",
            paramLabel = "FILE",
            description = "Attempts as JSON lines; - for standard input (the default).")
    private String file = "-";

    @Override
    public Integer call() throws IOException {
        SlipFinder finder = new SlipFinder(Rates.shipped());
        try (BufferedReader in = Source.open(file)) {
            return LineWork.of(spec).run(in, new Finding(finder));
        }
    }

    private record Finding(SlipFinder finder) implements LineWork.Turning {

        @Override
        public Optional<String> turn(String line) {
            Attempt attempt = AttemptJson.parse(line);
            return Optional.of(
                    SlipJson.of(finder.find(attempt.problem(), attempt.answer())).toString());
        }

        @Override
        public Optional<String> faulty(String message) {
            return Optional.of(FaultLine.of(message));
        }
    }
}
