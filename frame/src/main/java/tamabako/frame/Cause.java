package tamabako.frame;

import java.util.Locale;

/// What asked for a step. Places are powers of ten of the number that the digit belongs to.
public sealed interface Cause {

    /// The cause that this step finally serves: itself, or for a carry or a borrow the entry that
    /// called for it.
    default Cause entry() {
        return switch (this) {
            case Carry(Cause serves) -> serves.entry();
            case Borrow(Cause serves) -> serves.entry();
            default -> this;
        };
    }

    /// The word used in files and commands, such as `partial-product`.
    default String word() {
        return getClass()
                .getSimpleName()
                .replaceAll("(?<=[a-z])(?=[A-Z])", "-")
                .toLowerCase(Locale.ROOT);
    }

    /// A number that a working starts from.
    enum Operand {
        FIRST_ROW,
        MULTIPLICAND,
        MULTIPLIER,
        DIVIDEND,
        DIVISOR,
        RADICAND
    }

    /// A digit of an operand is set before the working begins.
    record Setting(Operand operand, int place) implements Cause {}

    /// A digit of a row of a column; the first row is row 1.
    record Row(int row, int place) implements Cause {}

    /// One carried to this rod.
    record Carry(Cause serves) implements Cause {}

    /// One borrowed from this rod.
    record Borrow(Cause serves) implements Cause {}

    /// A loan from an imagined rod: the total goes below zero in `row`.
    ///
    /// Source: Heffelfinger and Flom, Abacus: Mystery of the Bead, negative numbers.
    record Loan(int row) implements Cause {}

    /// The loan is given back: after `row` the total is no longer below zero.
    record LoanReturned(int row) implements Cause {}

    /// Multiplicand digit times multiplier digit, always two digits.
    record PartialProduct(
            int multiplicandPlace, int multiplicandDigit, int multiplierPlace, int multiplierDigit)
            implements Cause {}

    /// A multiplicand digit that is used up is cleared.
    record MultiplicandCleared(int place) implements Cause {}

    /// A trial digit of the quotient is set.
    record TrialDigit(int place, int digit) implements Cause {}

    /// Quotient digit times divisor digit is taken off; `divisorIndex` counts the divisor's digits
    /// from 1 at its left.
    record ProductTaken(int quotientPlace, int quotientDigit, int divisorIndex, int divisorDigit)
            implements Cause {}

    /// A quotient digit was too large: it becomes `digit`, and what was taken too much is given
    /// back (modoshizan).
    record RevisedDown(int place, int digit) implements Cause {}

    /// A quotient digit was too small: it becomes `digit`, and the divisor is taken off once more.
    record RevisedUp(int place, int digit) implements Cause {}

    /// A digit of a root is set. `index` counts the root's digits from 1 at its left.
    record RootDigit(int index, int digit) implements Cause {}

    /// A root digit times an earlier digit of the root (or of its double or triple) is taken off;
    /// `against` counts those from 1 at the left.
    record RootProductTaken(int index, int digit, int against, int againstDigit) implements Cause {}

    /// The square of a root digit is taken off.
    record SquareTaken(int index, int digit) implements Cause {}

    /// Half of the square of a root digit is taken off (han-kuku).
    record HalfSquareTaken(int index, int digit) implements Cause {}

    /// The cube of a root digit is taken off.
    record CubeTaken(int index, int digit) implements Cause {}

    /// The remainder, or the doubled root, is halved in place.
    record Halved(int place) implements Cause {}

    /// A root digit is doubled in place (the double-root way).
    record Doubled(int index) implements Cause {}

    /// Three times the root is set or lengthened at the far left.
    record TripleSet(int index) implements Cause {}

    /// What is left of a cube root's quotient is multiplied by the triple and added back to the
    /// remainder.
    record AddedBack(int index, int digit, int tripleIndex, int tripleDigit) implements Cause {}

    /// A quotient digit that has been added back is cleared.
    record QuotientCleared(int index) implements Cause {}
}
