package tamabako.desk.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import tamabako.records.WholeBook;

/// Tells how many rows of a class book went by, once it takes longer than a second.
final class RowProgress implements WholeBook {

    private final Progress progress;
    private int rows;

    RowProgress(PrintWriter err) {
        this.progress = new Progress(err, "rows");
    }

    @Override
    public void table(String name, List<String> columns) {}

    @Override
    public void row(String line) {
        progress.at(++rows);
    }

    /// All rows went by; the counts as one line.
    String done(Map<String, Long> counts) {
        progress.done(rows);
        long all = counts.values().stream().mapToLong(Long::longValue).sum();
        return "%,d rows in %d tables (%,d pupils, %,d sheets, %,d pieces of work)"
                .formatted(
                        all,
                        counts.size(),
                        counts.getOrDefault("pupil", 0L),
                        counts.getOrDefault("sheet", 0L),
                        counts.getOrDefault("work", 0L));
    }
}
