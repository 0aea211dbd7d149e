package tamabako.problems.grade;

/// Which columns of a batch have rows that are taken. All others are added only.
///
/// @param mixed the columns with rows that are taken
/// @param minusRows how many rows of a mixed column are taken; never the first
/// @param negative those of the mixed columns whose answer is below zero (hosū)
/// @param mayDip whether the running total of the other mixed columns may fall below zero on the
///   way
public record Signs(Share mixed, Span minusRows, Share negative, boolean mayDip) {

    /// Every column is added only.
    public static final Signs ADDED = new Signs(Share.NONE, Span.of(0), Share.NONE, false);

    public Signs {
        if (negative.count() > mixed.count()) {
            throw new IllegalArgumentException(
                    "Of %d mixed columns, %d cannot end below zero."
                            .formatted(mixed.count(), negative.count()));
        }
    }
}
