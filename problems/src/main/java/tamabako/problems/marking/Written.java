package tamabako.problems.marking;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tamabako.problems.Answer;
import tamabako.problems.Problem;
import tamabako.problems.words.ProblemWords;

/// The right answer as it should be written, for keys: `¥9,528`, `0.46`, `−1,234`, `14` with
/// remainder `2`.
///
/// Source: JCCI's rules for writing answers. Amounts in units with decimals have all of them, such
/// as `$12.50`; common practice, no published source.
///
/// @param number the value with its commas, its minus sign and the sign of its unit
/// @param remainder the remainder, where there is one other than zero
public record Written(String number, Optional<String> remainder) {

    /// The answer to `problem` as it should be written.
    public static Written of(Problem problem) {
        Answer answer = problem.answer();
        Optional<Unit> unit = problem.terms().unit().map(Unit::of);
        return new Written(
                write(answer.value(), unit),
                answer.remainder()
                        .filter(left -> left.signum() != 0)
                        .map(left -> write(left, unit)));
    }

    /// The whole answer, such as `14 あまり 2` in Japanese.
    public String in(Locale locale) {
        return remainder
                .map(left ->
                        ProblemWords.of(locale)
                                .say(
                                        "written.with-remainder",
                                        Map.of("number", number, "remainder", left)))
                .orElse(number);
    }

    /// The whole answer in English, such as `14 r 2`.
    @Override
    public String toString() {
        return in(Locale.ENGLISH);
    }

    private static String write(BigDecimal value, Optional<Unit> unit) {
        int minor = Math.max(0, unit.map(Unit::places).orElse(0));
        BigDecimal size = value.abs();
        String figures = (size.scale() < minor ? size.setScale(minor) : size).toPlainString();
        int point = figures.indexOf('.');
        StringBuilder written = new StringBuilder(figures);
        for (int i = (point < 0 ? figures.length() : point) - 3; i > 0; i -= 3) {
            written.insert(i, ',');
        }
        return (value.signum() < 0 ? "−" : "") + unit.map(Unit::sign).orElse("") + written;
    }
}
