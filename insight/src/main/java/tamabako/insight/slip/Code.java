package tamabako.insight.slip;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import tamabako.frame.Cause;

/// The way, place, digits and move of a slip, packed into one `long`: from the lowest bit 7 bits
/// way, 7 rod, 14 where, 7 and 7 the two digits, 4 move, 8 cell. The finder weighs thousands of
/// slips and shows eight.
final class Code {

    private static final Way[] WAYS = Way.values();
    private static final Cause.Operand[] OPERANDS = Cause.Operand.values();

    /// The most rows that a packed place can number.
    static final int MOST_ROWS = (1 << 11) - 1;

    private static final int ROD_ZERO = 64;
    private static final int ROW = 1 << 11;
    private static final int OPERAND = 2 << 11;
    private static final int PRODUCT = 3 << 11;
    private static final int ANSWER = 0;

    private Code() {}

    /// A slip that is on no one rod.
    static long of(Way way, int where) {
        return way.index() | (long) where << 14;
    }

    /// A slip on the rod that holds `10^rod`.
    static long of(Way way, int where, int rod) {
        return way.index() | place(where, rod);
    }

    /// The place alone, to be joined with a slip that has none.
    static long place(int where, int rod) {
        return (long) where << 14 | (long) (rod + ROD_ZERO) << 7;
    }

    /// The same with the digit that its way tells of, 0 to 99.
    static long with(long code, int first) {
        return code | (long) (first + 1) << 28;
    }

    /// The same with the two digits that its way tells of, 0 to 99 each.
    static long with(long code, int first, int second) {
        return with(code, first) | (long) (second + 1) << 35;
    }

    /// The same as a slip of `move`.
    static long in(long code, Move move) {
        return code | (long) (move.index() + 1) << 42;
    }

    /// The same as a slip of the step that adds `digit` on a rod that holds `held`.
    static long on(long code, int held, int digit) {
        return code | (long) (Cell.index(held, digit) + 1) << 46;
    }

    /// The index of the [Cell] of a slip; -1 for none.
    static int cell(long code) {
        return ((int) (code >> 46) & 0xFF) - 1;
    }

    /// 0 for a slip of no move, else one more than the move's index.
    static int moveNumber(long code) {
        return (int) (code >> 42) & 0xF;
    }

    static int row(int row) {
        return ROW | row;
    }

    /// The number in a packed place, such as that of its row.
    static int number(int where) {
        return where & MOST_ROWS;
    }

    @SuppressWarnings("EnumOrdinal")
    static int operand(Cause.Operand operand) {
        return OPERAND | operand.ordinal();
    }

    static int product(int first, int second) {
        return PRODUCT | 10 * first + second;
    }

    static int answer() {
        return ANSWER;
    }

    static Way way(long code) {
        return WAYS[wayIndex(code)];
    }

    /// The index of the [Way] of a slip.
    static int wayIndex(long code) {
        return (int) code & 0x7F;
    }

    /// Kind, rod and where, without way and digits: slips that agree in it are one entry.
    static long place(long code) {
        return code & 0xFFF_FF80L;
    }

    static OptionalInt rod(long code) {
        int rod = (int) (code >> 7) & 0x7F;
        return rod == 0 ? OptionalInt.empty() : OptionalInt.of(rod - ROD_ZERO);
    }

    static Where where(long code) {
        int where = (int) (code >> 14) & 0x3FFF;
        int number = where & MOST_ROWS;
        return switch (where & ~MOST_ROWS) {
            case ROW -> new Where.Row(number);
            case OPERAND -> new Where.Operand(OPERANDS[number]);
            case PRODUCT -> new Where.PartialProduct(number / 10, number % 10);
            default -> new Where.Answer();
        };
    }

    static List<Integer> digits(long code) {
        List<Integer> digits = new ArrayList<>();
        for (int shift = 28; shift <= 35; shift += 7) {
            int digit = (int) (code >> shift) & 0x7F;
            if (digit > 0) {
                digits.add(digit - 1);
            }
        }
        return digits;
    }
}
