package tamabako.voice.script;

import java.math.BigDecimal;

/// Numbers in figures, as a language writes them.
final class Figures {

    private Figures() {}

    /// The figures of a number that is not below zero, in groups of three.
    static String of(BigDecimal number, CallWords words) {
        String plain = number.toPlainString();
        int point = plain.indexOf('.') < 0 ? plain.length() : plain.indexOf('.');
        StringBuilder figures = new StringBuilder();
        for (int i = 0; i < point; i++) {
            if (i > 0 && (point - i) % 3 == 0) {
                figures.append(words.text("figures.group"));
            }
            figures.append(plain.charAt(i));
        }
        if (point < plain.length()) {
            figures.append(words.text("figures.point")).append(plain, point + 1, plain.length());
        }
        return figures.toString();
    }
}
