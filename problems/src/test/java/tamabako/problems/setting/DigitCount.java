package tamabako.problems.setting;

import java.math.BigDecimal;

/// Counts digits in what stands on the paper, figure by figure.
final class DigitCount {

    private DigitCount() {}

    /// The figures of a number without sign, point and zeros in front.
    static String of(BigDecimal number) {
        String figures = number.toPlainString().replace("-", "").replace(".", "");
        return figures.replaceFirst("^0+(?=.)", "");
    }

    /// The same without zeros at the end of decimals.
    static String shortest(BigDecimal number) {
        String plain = number.toPlainString().replace("-", "");
        String cut = plain.contains(".") ? plain.replaceFirst("\\.?0+$", "") : plain;
        return cut.replace(".", "").replaceFirst("^0+(?=.)", "");
    }
}
