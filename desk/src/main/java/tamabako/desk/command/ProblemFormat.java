package tamabako.desk.command;

import java.util.Locale;

/// The formats that problems are read and written in.
enum ProblemFormat {
    /// One JSON object a line.
    json,
    /// One plain line a problem.
    text,
    /// A spreadsheet.
    csv,
    /// A package of QTI 3 items, or one item.
    qti;

    /// What the ending of a file's name says; lines, where it says nothing.
    static ProblemFormat of(String file) {
        String name = file.toLowerCase(Locale.ROOT);
        if (name.endsWith(".csv")) {
            return csv;
        }
        return name.endsWith(".zip") || name.endsWith(".xml") ? qti : json;
    }
}
