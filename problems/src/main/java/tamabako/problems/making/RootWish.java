package tamabako.problems.making;

import java.util.OptionalInt;

/// Roots (kaihō) of whole numbers.
///
/// Exact: no root is 1 or ends in 0; common practice, no published source. To places: no radicand
/// has an exact root, and the root is rounded half up.
///
/// @param degree 2 for square roots, 3 for cube roots
/// @param digits whole digits of the root, within 1 to 10
/// @param places decimal places of the root, 1 to 6; empty for exact roots
public record RootWish(int degree, Digits digits, OptionalInt places) implements Wish {

    /// Exact roots of so many digits.
    public RootWish(int degree, int rootDigits) {
        this(degree, Digits.of(rootDigits), OptionalInt.empty());
    }

    /// These roots rounded to `places`.
    public RootWish to(int changed) {
        return new RootWish(degree, digits, OptionalInt.of(changed));
    }
}
