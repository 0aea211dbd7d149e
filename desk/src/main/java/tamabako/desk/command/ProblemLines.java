package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Model.CommandSpec;
import tamabako.frame.Unworkable;
import tamabako.problems.Problem;
import tamabako.problems.ProblemFile;
import tamabako.problems.Unreadable;
import tamabako.problems.csv.ProblemCsv;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.qti.QtiPackage;
import tamabako.problems.text.ProblemText;

/// Problems of a file in any format.
///
/// @param problems the problems that could be read, in order; one without a name has its number
/// @param exit the exit code for what was wrong
record ProblemLines(List<Problem> problems, int exit) {

    /// Reads every problem of a file in the format that its name says; what is bad is named on
    /// standard error and the rest is read.
    static ProblemLines read(CommandSpec command, String file) throws IOException {
        return read(command, file, ProblemFormat.of(file));
    }

    /// The same in that format.
    static ProblemLines read(CommandSpec command, String file, ProblemFormat format)
            throws IOException {
        return switch (format) {
            case json, text -> lines(command, file);
            case csv -> whole(command, ProblemCsv.read(text(Source.bytes(file))));
            case qti -> whole(command, QtiPackage.read(QtiZip.read(Source.bytes(file))));
        };
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static ProblemLines whole(CommandSpec command, ProblemFile read) {
        read.faults()
                .forEach(fault ->
                        command.commandLine().getErr().println(fault.message(Locale.ENGLISH)));
        return new ProblemLines(read.problems(), read.isWhole() ? Exit.DONE : Exit.SOME_WRONG);
    }

    private static ProblemLines lines(CommandSpec command, String file) throws IOException {
        List<Problem> problems = new ArrayList<>();
        int number = 0;
        int exit = Exit.DONE;
        try (BufferedReader in = Source.open(file)) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                number++;
                if (line.isBlank() || line.startsWith("#")) {
                    continue;
                }
                try {
                    problems.add(named(parse(line), problems.size() + 1));
                } catch (Unreadable | Unworkable fault) {
                    exit = Exit.SOME_WRONG;
                    command.commandLine()
                            .getErr()
                            .println("line " + number + ": " + fault.getMessage());
                }
            }
        }
        return new ProblemLines(problems, exit);
    }

    /// The problem on one line.
    ///
    /// @throws Unreadable if it is none
    static Problem parse(String line) {
        return line.stripLeading().startsWith("{")
                ? ProblemJson.parse(line)
                : ProblemText.parse(line);
    }

    private static Problem named(Problem problem, int number) {
        return problem.id().isEmpty() ? problem.withId(String.valueOf(number)) : problem;
    }
}
