package tamabako.problems.setting;

/// Whether papers keep what setters of papers keep to besides the rules of an exam: rows that do
/// not repeat each other, digits about equally often, answers that begin with different digits, and
/// whatever else docs/papers.md lists. Common practice, no published source.
public enum SettersCustoms {
    /// They are kept, as far as the digits of a grade leave room; the usual case.
    KEPT,

    /// Only the table of the grade is kept, and every paper that it allows may come.
    LEFT_OUT
}
