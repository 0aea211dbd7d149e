package tamabako.problems.grade;

/// How the problems of a paper are numbered.
public enum Numbering {
    /// From 1 through the whole paper.
    THROUGH,
    /// From 1 in each section.
    BY_SECTION
}
