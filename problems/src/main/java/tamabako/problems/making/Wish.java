package tamabako.problems.making;

/// What a teacher asks of problems. A wish that cannot be granted is no error: the [Maker] says
/// why.
public sealed interface Wish permits ColumnWish, ProductWish, QuotientWish, RootWish {}
