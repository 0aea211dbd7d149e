package tamabako.desk.command;

import java.io.PrintWriter;

/// Says on standard error how far a command is, once it takes longer than a second.
final class Progress {

    private static final long SECOND = 1_000_000_000L;

    private final PrintWriter err;
    private final long begun = System.nanoTime();
    private long told = begun;

    Progress(PrintWriter err) {
        this.err = err;
    }

    /// So many lines are done.
    void at(int lines) {
        long now = System.nanoTime();
        if (now - told >= SECOND) {
            told = now;
            err.printf("%,d lines done, %,d a second%n", lines, rate(lines, now));
            err.flush();
        }
    }

    /// All lines are done.
    void done(int lines) {
        long now = System.nanoTime();
        if (now - begun >= SECOND) {
            err.printf("%,d lines in %.1f seconds%n", lines, (now - begun) / (double) SECOND);
        }
    }

    private long rate(int lines, long now) {
        return lines * SECOND / Math.max(1, now - begun);
    }
}
