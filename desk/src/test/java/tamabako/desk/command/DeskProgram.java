package tamabako.desk.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tamabako.desk.Tamabako;

/// The desk as a program of its own.
final class DeskProgram {

    private DeskProgram() {}

    /// Starts it; what it says on standard error comes out with the rest.
    static Process start(String... options) throws IOException {
        List<String> command =
                new ArrayList<>(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "--enable-native-access=ALL-UNNAMED",
                                "-XX:TieredStopAtLevel=1",
                                "-Duser.language=en",
                                "-cp",
                                System.getProperty("java.class.path"),
                                Tamabako.class.getName(),
                                "desk"));
        command.addAll(List.of(options));
        return new ProcessBuilder(command).redirectErrorStream(true).start();
    }
}
