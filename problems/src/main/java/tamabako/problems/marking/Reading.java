package tamabako.problems.marking;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tamabako.problems.HalfWidth;
import tamabako.problems.marking.Mark.Form;

/// A written answer as it is read: its value even where the form is wrong, its remainder, and the
/// first fault of form.
record Reading(BigDecimal value, Optional<BigDecimal> remainder, Optional<Form> form) {

    private static final int LONGEST = 200;

    /// The signs that part a quotient from its remainder: `r`, あまり, dots.
    private static final Pattern REMAINDER =
            Pattern.compile(
                    "\\s*(?:remainder|rem\\.?|r|あまり|余り|余|…+|⋯+|‥+|・{2,}|\\.{3,})\\s*",
                    Pattern.CASE_INSENSITIVE);

    /// What `written` says, or empty where no number can be read.
    ///
    /// @param unit the currency of the answer, where it is an amount
    static Optional<Reading> of(String written, Optional<String> unit, WritingRules rules) {
        String text = written.strip();
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        boolean severalLines = text.chars().anyMatch(c -> c == '\n' || c == '\r');
        String plain = HalfWidth.of(text.replaceAll("\\s*[\\r\\n]\\s*", ""));
        Matcher split = REMAINDER.matcher(plain);
        boolean parted = split.find();
        String front = parted ? plain.substring(0, split.start()) : plain;
        Optional<NumberForm> number = NumberForm.read(front, unit);
        Optional<NumberForm> rest =
                parted ? NumberForm.read(plain.substring(split.end()), unit) : Optional.empty();
        if (number.isEmpty() || (parted && rest.isEmpty())) {
            return Optional.empty();
        }
        Optional<Form> lines =
                severalLines ? Optional.of(new Form.SeveralLines()) : Optional.empty();
        return Optional.of(
                new Reading(
                        number.get().value(),
                        rest.map(NumberForm::value),
                        lines.or(() -> number.get().fault(rules))
                                .or(() -> rest.flatMap(form -> form.fault(rules)))));
    }
}
