package tamabako.problems.making.column;

import tamabako.problems.making.draw.Draws;

/// A small change of a column that can be undone.
///
/// Every move is as likely as the one that undoes it, weighed by what the columns are worth: one
/// digit more is put in at any place and may be any of ten, and one digit less is taken from any
/// place; so a column with a digit more gets a tenth of the draws, which is its worth. Therefore a
/// column that moves for ever comes by every column alike (Metropolis and others, "Equation of
/// state calculations by fast computing machines", 1953).
final class Move {

    private final Facts facts;
    private final SignPatterns signs;
    private final Lengths lengths;
    private final boolean keepsBag;
    private final boolean keepsMinus;
    private final boolean keepsLengths;
    private int one;
    private int other;
    private long oneSize;
    private long otherSize;
    private boolean oneMinus;
    private boolean otherMinus;

    /// @param keepsBag whether the digits of all rows stay the same, in other places
    Move(Asked asked, Facts facts, boolean keepsBag) {
        this.facts = facts;
        this.signs = asked.patterns();
        this.lengths = asked.shape().lengths();
        this.keepsBag = keepsBag;
        this.keepsMinus = asked.signs().leastMinus() == asked.signs().mostMinus();
        this.keepsLengths = lengths.least() == lengths.most() || lengths instanceof Lengths.Table;
    }

    /// Makes one; false, and nothing changed, if it would lead out of the shape or the signs.
    boolean make(Draws draws) {
        long chance = draws.bits();
        remember(part(chance, 8, facts.rows()), part(chance, 20, facts.rows()));
        int kind = (int) chance & 15;
        if (kind < 6) {
            return swapDigits(chance);
        }
        if (kind < 10) {
            return keepsBag ? swapDigits(chance) : changeDigit(chance);
        }
        if (kind < 13) {
            return keepsLengths ? swapDigits(chance) : resize(kind, chance);
        }
        return kind == 13 ? swapRows() : changeSigns(kind);
    }

    /// A number below `bound`, at most 4096, from twelve bits of `chance`.
    private static int part(long chance, int from, int bound) {
        return (int) ((((chance >>> from) & 0xFFF) * bound) >>> 12);
    }

    private void remember(int row, int second) {
        one = row;
        other = second;
        oneSize = facts.size(row);
        otherSize = facts.size(second);
        oneMinus = facts.isMinus(row);
        otherMinus = facts.isMinus(second);
    }

    void undo() {
        if (facts.size(one) != oneSize) {
            facts.setSize(one, oneSize);
        }
        if (facts.size(other) != otherSize) {
            facts.setSize(other, otherSize);
        }
        facts.setMinus(one, oneMinus);
        facts.setMinus(other, otherMinus);
    }

    private boolean swapDigits(long chance) {
        int place = part(chance, 32, Digits.length(oneSize));
        int second = part(chance, 44, Digits.length(otherSize));
        int digit = Digits.digit(oneSize, place);
        int moved = Digits.digit(otherSize, second);
        if (digit == moved) {
            return false;
        }
        if (one == other) {
            long half = Digits.with(oneSize, place, moved);
            return replace(one, Digits.with(half, second, digit), oneSize);
        }
        long first = Digits.with(oneSize, place, moved);
        long next = Digits.with(otherSize, second, digit);
        if (Digits.length(first) != Digits.length(oneSize)
                || Digits.length(next) != Digits.length(otherSize)) {
            return false;
        }
        facts.replaceSize(one, first);
        facts.replaceSize(other, next);
        return true;
    }

    /// Puts `size` in a row if it keeps its length.
    private boolean replace(int row, long size, long before) {
        if (Digits.length(size) != Digits.length(before)) {
            return false;
        }
        facts.setSize(row, size);
        return true;
    }

    private boolean changeDigit(long chance) {
        int place = part(chance, 32, Digits.length(oneSize));
        return replace(one, Digits.with(oneSize, place, part(chance, 44, 10)), oneSize);
    }

    private boolean resize(int kind, long chance) {
        if (kind == 10 || lengths instanceof Lengths.Total) {
            return moveDigit(chance);
        }
        return chance << 1 < 0 ? insert(chance) : remove(chance);
    }

    private boolean insert(long chance) {
        int length = Digits.length(oneSize);
        int place = part(chance, 32, length + 1);
        int digit = part(chance, 44, 10);
        if (keepsBag || length == lengths.most() || (place == length && digit == 0)) {
            return false;
        }
        facts.setSize(one, Digits.inserted(oneSize, place, digit));
        return true;
    }

    private boolean remove(long chance) {
        int length = Digits.length(oneSize);
        if (keepsBag || length == lengths.least()) {
            return false;
        }
        long size = Digits.removed(oneSize, part(chance, 32, length));
        if (Digits.length(size) != length - 1) {
            return false;
        }
        facts.setSize(one, size);
        return true;
    }

    /// From one row to another.
    private boolean moveDigit(long chance) {
        int length = Digits.length(oneSize);
        int second = Digits.length(otherSize);
        if (one == other || length == lengths.least() || second == lengths.most()) {
            return false;
        }
        int from = part(chance, 32, length);
        int digit = Digits.digit(oneSize, from);
        long less = Digits.removed(oneSize, from);
        int to = part(chance, 44, second + 1);
        if (Digits.length(less) != length - 1 || (to == second && digit == 0)) {
            return false;
        }
        facts.replaceSize(one, less);
        facts.replaceSize(other, Digits.inserted(otherSize, to, digit));
        return true;
    }

    private boolean swapRows() {
        if (oneSize == otherSize) {
            return false;
        }
        facts.replaceSize(one, otherSize);
        facts.replaceSize(other, oneSize);
        return true;
    }

    private boolean changeSigns(int kind) {
        if (kind == 14 && !keepsMinus) {
            facts.setMinus(one, !oneMinus);
        } else if (oneMinus != otherMinus) {
            facts.setMinus(one, otherMinus);
            facts.setMinus(other, oneMinus);
        } else {
            return false;
        }
        if (signs.have(facts)) {
            return true;
        }
        undo();
        return false;
    }
}
