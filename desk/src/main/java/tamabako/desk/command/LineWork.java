package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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

    /// Reads lines that are told of together, after the last one.
    interface Gathering<T> {

        /// What stands on `line`. It is called from several threads at once.
        ///
        /// @throws Unreadable or Unworkable if the line is wrong
        T read(String line);

        /// Keeps what was read. It is called in the order of the lines.
        void keep(T read);
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
                    .mapToObj(i -> turn(before + i + 1, lines.get(i), turning::turn))
                    .toList()
                    .forEach(result -> tell(result, turning));
            done += batch.size();
            progress.at(done);
        }
        progress.done(done);
        out.flush();
        err.flush();
        return faults == 0 ? Exit.DONE : Exit.SOME_WRONG;
    }

    /// Reads every line as [#run] does, names the bad ones, and gives the exit code.
    <T> int gather(BufferedReader in, Gathering<T> gathering) throws IOException {
        int done = 0;
        for (List<String> batch = read(in); !batch.isEmpty(); batch = read(in)) {
            int before = done;
            List<String> lines = batch;
            IntStream.range(0, lines.size())
                    .parallel()
                    .mapToObj(i -> turn(before + i + 1, lines.get(i), gathering::read))
                    .toList()
                    .forEach(one -> {
                        one.kept().ifPresent(gathering::keep);
                        tellFault(one.fault());
                    });
            done += batch.size();
            progress.at(done);
        }
        progress.done(done);
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

    private record Result<T>(Optional<T> kept, Optional<String> fault) {}

    private static <T> Result<T> turn(int number, String line, Function<String, T> turning) {
        if (line.isBlank() || line.startsWith("#")) {
            return new Result<>(Optional.empty(), Optional.empty());
        }
        try {
            return new Result<>(Optional.of(turning.apply(line)), Optional.empty());
        } catch (Unreadable | Unworkable fault) {
            return new Result<>(
                    Optional.empty(), Optional.of("line " + number + ": " + fault.getMessage()));
        }
    }

    private void tell(Result<Optional<String>> result, Turning turning) {
        result.kept().flatMap(Function.identity()).ifPresent(out::println);
        result.fault().flatMap(turning::faulty).ifPresent(out::println);
        tellFault(result.fault());
    }

    private void tellFault(Optional<String> fault) {
        fault.ifPresent(err::println);
        faults += fault.isPresent() ? 1 : 0;
    }
}
