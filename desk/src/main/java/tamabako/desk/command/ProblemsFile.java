package tamabako.desk.command;

import java.io.IOException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/// The file of problems that a command reads.
final class ProblemsFile {

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "0..1",
            defaultValue = "-",
            paramLabel = "FILE",
            description =
                    "Problems in any format that `problems` knows; - for JSON lines or plain lines"
                            + " from standard input (the default).")
    private String file = "-";

    /// Its problems; what could not be read is named on standard error.
    ProblemLines read() throws IOException {
        return ProblemLines.read(spec, file);
    }
}
