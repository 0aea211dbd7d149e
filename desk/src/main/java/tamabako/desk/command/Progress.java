package tamabako.desk.command;

import java.io.PrintWriter;

/// Says on standard error how far a command is, once it takes longer than a second.
final class Progress {

    private static final long SECOND = 1_000_000_000L;

    private final PrintWriter err;
    private final String things;
    private final long begun = System.nanoTime();
    private long told = begun;

    Progress(PrintWriter err) {
        this(err, "lines");
    }

    /// @param things what is counted
    Progress(PrintWriter err, String things) {
        this.err = err;
        this.things = things;
    }

    /// So many lines are done.
    void at(int lines) {
        long now = System.nanoTime();
        if (now - told >= SECOND) {
            told = now;
            err.printf("%,d %s done, %,d a second%n", lines, things, rate(lines, now));
            err.flush();
        }
    }

    /// All lines are done.
    void done(int lines) {
        long now = System.nanoTime();
        if (now - begun >= SECOND) {
            err.printf("%,d %s in %.1f seconds%n", lines, things, (now - begun) / (double) SECOND);
        }
    }

    private long rate(int lines, long now) {
        return lines * SECOND / Math.max(1, now - begun);
    }
}
