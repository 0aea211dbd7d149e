package tamabako.problems.marking;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tamabako.problems.marking.Mark.Form;

/// One number as it is written: its parts from the left.
///
/// @param asked the unit of the answer, where it is an amount
/// @param sign `-`, `+` or nothing
/// @param unit what stands before the number
/// @param whole the whole digits with their commas
/// @param places what follows the point, with any commas; empty where there is no point
/// @param closed whether a closing mark follows
/// @param behind the unit that follows
record NumberForm(
        Optional<Unit> asked,
        String sign,
        String unit,
        String whole,
        Optional<String> places,
        boolean closed,
        String behind) {

    private static final String UNIT = "[¥\\\\$€£₩円]|[A-Z]{3}";

    private static final Pattern PARTS =
            Pattern.compile(
                    "(?<sign>[-+]?) *(?<unit>"
                            + UNIT
                            + ")? *(?<inner>[-+]?) *(?<whole>[\\d,]*)(?<places>\\.[\\d,]*)?"
                            + "(?<closed>[‾￣¯]?) *(?<behind>"
                            + UNIT
                            + ")?");

    private static final Pattern GROUPED = Pattern.compile("\\d{1,3}(,\\d{3})*");

    /// The number in `text`, which is half-width; empty if there is none.
    static Optional<NumberForm> read(String text, Optional<String> asked) {
        Matcher parts = PARTS.matcher(text);
        boolean one =
                parts.matches()
                        && text.chars().anyMatch(c -> c >= '0' && c <= '9')
                        && (parts.group("sign").isEmpty() || parts.group("inner").isEmpty());
        if (!one) {
            return Optional.empty();
        }
        return Optional.of(
                new NumberForm(
                        asked.map(Unit::of),
                        parts.group("sign") + parts.group("inner"),
                        part(parts, "unit"),
                        parts.group("whole"),
                        Optional.ofNullable(parts.group("places")).map(p -> p.substring(1)),
                        !parts.group("closed").isEmpty(),
                        part(parts, "behind")));
    }

    BigDecimal value() {
        String digits = sign + whole + places.map(p -> "." + p).orElse("");
        return new BigDecimal(digits.replace(",", ""));
    }

    /// The first fault of form from the left.
    Optional<Form> fault(WritingRules rules) {
        return frontFault().or(() -> wholeFault(rules)).or(this::placesFault).or(this::endFault);
    }

    private Optional<Form> frontFault() {
        if (sign.equals("+")) {
            return Optional.of(new Form.PlusSign());
        }
        if (sign.equals("-") && value().signum() == 0) {
            return Optional.of(new Form.MinusZero());
        }
        boolean fits = unit.isEmpty() || asked.filter(u -> u.isWritten(unit)).isPresent();
        return fits ? Optional.empty() : Optional.of(new Form.OtherUnit(unit));
    }

    private Optional<Form> wholeFault(WritingRules rules) {
        boolean commas = whole.contains(",");
        if (commas && !GROUPED.matcher(whole).matches()) {
            return Optional.of(new Form.CommaMisplaced());
        }
        if (whole.length() > 1 && whole.startsWith("0")) {
            return Optional.of(new Form.LeadingZero());
        }
        boolean missing = rules.commas() && !commas && whole.length() > 3;
        return missing ? Optional.of(new Form.CommaMissing()) : Optional.empty();
    }

    private Optional<Form> placesFault() {
        if (places.isEmpty()) {
            return Optional.empty();
        }
        String digits = places.get();
        if (digits.contains(",")) {
            return Optional.of(new Form.CommaMisplaced());
        }
        if (digits.isEmpty()) {
            boolean closes = asked.isPresent() && !closed;
            return closes ? Optional.empty() : Optional.of(new Form.PointAtEnd());
        }
        boolean minorUnits =
                asked.filter(u -> u.places() > 0 && u.places() == digits.length()).isPresent();
        return digits.endsWith("0") && !minorUnits
                ? Optional.of(new Form.TrailingZero())
                : Optional.empty();
    }

    private Optional<Form> endFault() {
        if (closed && asked.isEmpty()) {
            return Optional.of(new Form.ClosingMark());
        }
        return behind.isEmpty() ? Optional.empty() : Optional.of(new Form.UnitBehind(behind));
    }

    private static String part(Matcher parts, String name) {
        String found = parts.group(name);
        return found == null ? "" : found;
    }
}
