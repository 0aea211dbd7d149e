package tamabako.desk.command;

import java.io.IOException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/// The ladder that a command looks at.
final class LadderOption {

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--ladder",
            required = true,
            paramLabel = "LADDER",
            description = "A shipped ladder, or its file.")
    private String name = "";

    /// The ladder of that name.
    ///
    /// @throws ParameterException if there is none, or its file has mistakes, which are told
    LadderSource read() throws IOException {
        return LadderSource.of(spec, name);
    }
}
