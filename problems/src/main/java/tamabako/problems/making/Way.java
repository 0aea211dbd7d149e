package tamabako.problems.making;

/// How the columns of a wish are drawn.
sealed interface Way {

    /// Columns come from `source`; the best of them have `repeats` rows that are like others.
    record Drawn(Source source, int repeats) implements Way {}

    /// There is no column; this is proved.
    record Nothing() implements Way {}

    /// None was found in so many tries.
    record GaveUp(int tries) implements Way {}
}
