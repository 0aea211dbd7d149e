package tamabako.voice.script;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.problems.Column;

/// Writes call scripts, as the formulae of the trade have it.
///
/// In Japanese "hiite wa" stands before the first minus row of a run and holds until "kuwaete"; in
/// English the sign is said with every minus row, and "add" with the first plus row after one. A
/// number that is much longer than the one before is announced ("ōkiku") where the language has a
/// word for it.
public final class Caller {

    /// The most figures before the point that are called.
    public static final int MOST_DIGITS = 16;

    /// So many figures more than the row before make a row much longer: common practice, no
    /// published source.
    static final int MUCH_LONGER = 3;

    private final CallWords words;
    private final Amount amount;
    private final CallWish wish;

    private Caller(CallWords words, Amount amount, CallWish wish) {
        this.words = words;
        this.amount = amount;
        this.wish = wish;
    }

    /// The script of `column` in the language of `words`.
    public static Called call(Column column, CallWords words, CallWish wish) {
        String unit = unit(column, words, wish);
        Amount amount = new Amount(words, wish.wording(), unit);
        Optional<Unsayable> refusal = refusal(column, amount);
        return refusal.isPresent()
                ? new Called.Refused(refusal.get())
                : new Called.Written(new Caller(words, amount, wish).write(column));
    }

    private static String unit(Column column, CallWords words, CallWish wish) {
        boolean isWhole =
                column.rows().stream().allMatch(row -> row.stripTrailingZeros().scale() <= 0);
        String usual = isWhole ? words.text("unit.usual") : Amount.PLAIN;
        return wish.unit()
                .or(() -> column.terms().unit())
                .orElse(usual.isEmpty() ? Amount.PLAIN : usual);
    }

    private static Optional<Unsayable> refusal(Column column, Amount amount) {
        CallWords words = amount.words();
        if (!words.numbers().wordings().contains(amount.wording())) {
            return Optional.of(new Unsayable.NoSuchWording(amount.wording()));
        }
        if (!amount.isPlain() && !words.units().contains(amount.unit())) {
            return Optional.of(new Unsayable.UnknownUnit(amount.unit()));
        }
        for (int row = 1; row <= column.rows().size(); row++) {
            BigDecimal number = column.rows().get(row - 1);
            int digits = digits(number);
            if (digits > MOST_DIGITS) {
                return Optional.of(new Unsayable.TooLong(row, digits, MOST_DIGITS));
            }
            if (!amount.isPlain() && number.stripTrailingZeros().scale() > amount.coins()) {
                return Optional.of(new Unsayable.TooFine(row, amount.unit(), amount.coins()));
            }
        }
        return Optional.empty();
    }

    private static int digits(BigDecimal number) {
        return number.abs().toBigInteger().toString().length();
    }

    private CallScript write(Column column) {
        List<CallLine> rows = new ArrayList<>();
        for (int row = 0; row < column.rows().size(); row++) {
            rows.add(row(column.rows(), row));
        }
        return new CallScript(
                column.id(),
                words.language(),
                line(wish.clearing() ? "opening.clearing" : "opening"),
                rows,
                answer(column.answer().value()),
                line("right"));
    }

    private CallLine row(List<BigDecimal> rows, int row) {
        BigDecimal number = rows.get(row);
        boolean isMinus = number.signum() < 0;
        boolean wasMinus = row > 0 && rows.get(row - 1).signum() < 0;
        List<CallLine> pieces = new ArrayList<>();
        if (isMinus && !(wasMinus && words.text("signs").equals("stay"))) {
            pieces.add(line("minus"));
        }
        if (wasMinus && !isMinus) {
            pieces.add(line("plus"));
        }
        if (row > 0 && digits(number) >= digits(rows.get(row - 1)) + MUCH_LONGER) {
            pieces.add(line("larger"));
        }
        pieces.add(amount.line(number.abs()));
        return within(row == rows.size() - 1 ? "row.last" : "row", joined(pieces));
    }

    private CallLine answer(BigDecimal answer) {
        if (!Amount.isSayable(answer.abs())) {
            String sign = answer.signum() < 0 ? "−" : "";
            return new CallLine(sign + Figures.of(answer.abs(), words), List.of());
        }
        CallLine said = amount.line(answer.abs());
        return within(answer.signum() < 0 ? "answer.below" : "answer", said);
    }

    private CallLine joined(List<CallLine> pieces) {
        List<CallLine> said = pieces.stream().filter(piece -> !piece.words().isEmpty()).toList();
        return new CallLine(
                String.join(
                        words.find("joint").orElse(" "),
                        said.stream().map(CallLine::shown).toList()),
                said.stream().flatMap(piece -> piece.words().stream()).toList());
    }

    private CallLine line(String key) {
        return new CallLine(words.text(key), words.words(key));
    }

    /// The line with `inner` in the place `{0}` of the text of that key.
    private CallLine within(String key, CallLine inner) {
        List<String> said = new ArrayList<>();
        for (String word : words.words(key)) {
            if (word.equals("{0}")) {
                said.addAll(inner.words());
            } else {
                said.add(word);
            }
        }
        return new CallLine(words.text(key).replace("{0}", inner.shown()), said);
    }
}
