package tamabako.frame.words;

import java.math.BigDecimal;

/// Numbers as they are shown to people: grouped three by three, with a true minus sign.
final class Numbers {

    private Numbers() {}

    /// `number` without trailing zeros of decimals, such as 1,180 or −38 or 0.35.
    static String shown(BigDecimal number) {
        String plain = number.abs().stripTrailingZeros().toPlainString();
        int point = plain.indexOf('.') < 0 ? plain.length() : plain.indexOf('.');
        StringBuilder shown = new StringBuilder(plain);
        for (int i = point - 3; i > 0; i -= 3) {
            shown.insert(i, ',');
        }
        return number.signum() < 0 ? shown.insert(0, '−').toString() : shown.toString();
    }
}
