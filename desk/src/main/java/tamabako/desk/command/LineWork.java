package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import picocli.CommandLine.Model.CommandSpec;
import tamabako.frame.Unworkable;
import tamabako.problems.Unreadable;

/// Turns lines into lines: in order, on all cores, with every bad line named and the rest done.
final class LineWork {

    /// What one line becomes. It is called from several threads at once.
    interface Turning {

        /// The line for `line`; nothing where it asks for none.
        ///
        /// @throws Unreadable or Unworkable if the line is wrong
        Optional<String> turn(String line);

        /// What stands in the output for a line that is wrong, so that lines in and lines out stay
        /// in step; nothing where they need not.
        default Optional<String> faulty(String message) {
            return Optional.empty();
        }
    }

    /// Lines that are read before they are shared out over the cores.
    private static final int BATCH = 2_000;

    private final PrintWriter out;
    private final PrintWriter err;
    private final Progress progress;
    private int faults;

    private LineWork(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
        this.progress = new Progress(err);
    }

    /// Work that writes where the command writes.
    static LineWork of(CommandSpec command) {
        return new LineWork(command.commandLine().getOut(), command.commandLine().getErr());
    }

    /// Turns every line of `in` that is not blank and no comment (`#`), and gives the exit code.
    int run(BufferedReader in, Turning turning) throws IOException {
        int done = 0;
        for (List<String> batch = read(in); !batch.isEmpty(); batch = read(in)) {
            int before = done;
            List<String> lines = batch;
            IntStream.range(0, lines.size())
                    .parallel()
                    .mapToObj(i -> turn(before + i + 1, lines.get(i), turning))
                    .toList()
                    .forEach(this::tell);
            done += batch.size();
            progress.at(done);
        }
        progress.done(done);
        out.flush();
        err.flush();
        return faults == 0 ? Exit.DONE : Exit.SOME_WRONG;
    }

    private static List<String> read(BufferedReader in) throws IOException {
        List<String> batch = new ArrayList<>(BATCH);
        while (batch.size() < BATCH) {
            String line = in.readLine();
            if (line == null) {
                break;
            }
            batch.add(line);
        }
        return batch;
    }

    private record Result(Optional<String> line, Optional<String> fault) {}

    private static Result turn(int number, String line, Turning turning) {
        if (line.isBlank() || line.startsWith("#")) {
            return new Result(Optional.empty(), Optional.empty());
        }
        try {
            return new Result(turning.turn(line), Optional.empty());
        } catch (Unreadable | Unworkable fault) {
            String message = "line " + number + ": " + fault.getMessage();
            return new Result(turning.faulty(message), Optional.of(message));
        }
    }

    private void tell(Result result) {
        result.line().ifPresent(out::println);
        result.fault().ifPresent(err::println);
        faults += result.fault().isPresent() ? 1 : 0;
    }
}
