package tamabako.problems.making.column;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.Arrays;
import tamabako.problems.making.draw.Draws;

/// The digits that stand behind the leads of a column, to be taken out in any order.
final class Bag {

    private static final int IN_A_LONG = 16;
    private static final int BYTES = 8;
    private static final long[] CODES = {0, 1, 2, 3, 4, 8, 9, 10, 11, 12};
    private static final long EVERY_BYTE = 0x0101_0101_0101_0101L;
    private static final VarHandle EIGHT =
            MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

    /// What is in the bag, as packed numbers have it; with room to write eight at once.
    private final byte[] codes;

    /// As many dice as there are codes, each with a side less than the one before.
    private final int[] sides;

    private final int[] thrown = new int[Dice.AT_ONCE];

    /// What was taken out, four bits each, from the highest bits of the first on.
    private final long[] taken;

    private int size;

    /// @param room for so many digits, 230 at most
    Bag(int room) {
        codes = new byte[room + BYTES];
        sides = new int[room];
        Arrays.setAll(sides, i -> room - i);
        taken = new long[room / IN_A_LONG + 2];
    }

    /// Holds each digit so many times instead of what it held.
    void fill(int[] counts) {
        size = 0;
        for (int digit = 0; digit <= 9; digit++) {
            long eight = CODES[digit] * EVERY_BYTE;
            for (int i = 0; i < counts[digit]; i += BYTES) {
                EIGHT.set(codes, size + i, eight);
            }
            size += counts[digit];
        }
    }

    /// Takes all out, in an order of which all are equally likely.
    void empty(Draws draws) {
        int word = 0;
        while (size > 0) {
            int inWord = Math.min(IN_A_LONG, size);
            long digits = 0;
            for (int i = 0; i < inWord; i += Dice.AT_ONCE) {
                digits = take(Math.min(Dice.AT_ONCE, inWord - i), digits, draws);
            }
            taken[word++] = digits << (4 * (IN_A_LONG - inWord));
        }
    }

    private long take(int count, long before, Draws draws) {
        Dice.roll(draws, sides, sides.length - size, count, thrown);
        long digits = before;
        for (int i = 0; i < count; i++) {
            int place = thrown[i];
            digits = (digits << 4) | codes[place];
            codes[place] = codes[--size];
        }
        return digits;
    }

    /// A row that begins with `lead` and goes on with what was taken out, from the digit `from` on.
    long row(int lead, int from, int length) {
        int bits = 4 * (length - 1);
        int word = from / IN_A_LONG;
        int shift = 4 * (from % IN_A_LONG);
        long on = (taken[word] << shift) | ((taken[word + 1] >>> 1) >>> (Long.SIZE - 1 - shift));
        return (CODES[lead] << bits) | ((on >>> 1) >>> (Long.SIZE - 1 - bits));
    }
}
