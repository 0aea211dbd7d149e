package tamabako.problems.making;

/// Exact roots (kaihō) of whole numbers. No root is 1 or ends in 0; common practice, no published
/// source.
///
/// @param degree 2 for square roots, 3 for cube roots
/// @param rootDigits digits of the root, 1 to 10
public record RootWish(int degree, int rootDigits) implements Wish {}
