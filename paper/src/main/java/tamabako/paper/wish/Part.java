package tamabako.paper.wish;

/// What is printed of a sheet.
public enum Part {
    /// The problems, for the pupil.
    SHEET,
    /// The answers under the same numbers, for the teacher.
    KEY,
    /// The problems, and after them, on pages of its own, the key.
    BOTH;

    /// Whether the problems are printed.
    public boolean hasSheet() {
        return this != KEY;
    }

    /// Whether the answers are printed.
    public boolean hasKey() {
        return this != SHEET;
    }
}
