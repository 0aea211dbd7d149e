package tamabako.paper.pdf;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/// Bytes of a PDF while they are written.
final class Bytes {

    private static final int HUNDREDTHS = 100;
    private static final long TEN_THOUSANDTHS = 10_000;

    private byte[] bytes = new byte[1 << 12];
    private int length;

    int length() {
        return length;
    }

    byte[] array() {
        return bytes;
    }

    byte[] copy() {
        return Arrays.copyOf(bytes, length);
    }

    void clear() {
        length = 0;
    }

    Bytes add(int value) {
        if (length == bytes.length) {
            bytes = Arrays.copyOf(bytes, 2 * length);
        }
        bytes[length++] = (byte) value;
        return this;
    }

    Bytes add(byte[] more, int count) {
        while (length + count > bytes.length) {
            bytes = Arrays.copyOf(bytes, 2 * bytes.length);
        }
        System.arraycopy(more, 0, bytes, length, count);
        length += count;
        return this;
    }

    /// @param text of one byte a character
    Bytes add(String text) {
        for (int i = 0; i < text.length(); i++) {
            add(text.charAt(i));
        }
        return this;
    }

    Bytes whole(long number) {
        return add(Long.toString(number));
    }

    /// A length in points and a blank, to hundredths, which is finer than any printer.
    Bytes length(double points) {
        return decimal(Math.round(points * HUNDREDTHS), HUNDREDTHS).add(' ');
    }

    /// A factor and a blank, to ten-thousandths.
    Bytes factor(double factor) {
        return decimal(Math.round(factor * TEN_THOUSANDTHS), TEN_THOUSANDTHS).add(' ');
    }

    /// A reference to an object.
    Bytes reference(int number) {
        return whole(number).add(" 0 R");
    }

    /// Any text as a string.
    Bytes text(String text) {
        add('<').hex(0xFE).hex(0xFF);
        for (byte each : text.getBytes(StandardCharsets.UTF_16BE)) {
            hex(each);
        }
        return add('>');
    }

    Bytes hex(int value) {
        add(Character.toUpperCase(Character.forDigit(value >> 4 & 15, 16)));
        return add(Character.toUpperCase(Character.forDigit(value & 15, 16)));
    }

    private Bytes decimal(long parts, long of) {
        if (parts < 0) {
            add('-');
        }
        long size = Math.abs(parts);
        whole(size / of);
        long rest = size % of;
        if (rest > 0) {
            add('.');
        }
        for (long place = of / 10; rest > 0; place /= 10) {
            add((int) ('0' + rest / place));
            rest %= place;
        }
        return this;
    }
}
