package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import picocli.CommandLine.Parameters;

/// The file of attempts that a command reads.
final class AttemptsFile {

    @Parameters(
            arity = "0..1",
            defaultValue = "-",
            paramLabel = "FILE",
            description = "Attempts as JSON lines; - for standard input (the default).")
    private String file = "-";

    BufferedReader open() throws IOException {
        return Source.open(file);
    }
}
