package tamabako.voice.script;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import tamabako.voice.number.Meeting;
import tamabako.voice.number.NumberWords;
import tamabako.voice.number.Wording;

/// Says amounts: plain numbers, whole or with decimals, and money in notes and coins.
///
/// @param words the words of the language
/// @param wording in what way numbers are said
/// @param unit the unit as an ISO 4217 code, or [#PLAIN]
record Amount(CallWords words, Wording wording, String unit) {

    /// Numbers without a unit.
    static final String PLAIN = "none";

    /// Decimal places of the smallest coin.
    int coins() {
        return Integer.parseInt(words.find("unit." + unit + ".coins").orElse("0"));
    }

    boolean isPlain() {
        return unit.equals(PLAIN);
    }

    /// The line for `amount`, which is not below zero and not finer than its coins.
    CallLine line(BigDecimal amount) {
        return isPlain() ? plain(amount) : money(amount);
    }

    private CallLine plain(BigDecimal number) {
        int places = Math.max(number.scale(), 0);
        if (places == 0) {
            return new CallLine(Figures.of(number, words), number(number, Meeting.OPEN));
        }
        List<String> said = new ArrayList<>(number(number, Meeting.HARD));
        said.addAll(words.words("point"));
        String figures = number.toPlainString();
        said.addAll(words.numbers().figures(figures.substring(figures.indexOf('.') + 1)));
        return new CallLine(Figures.of(number, words), said);
    }

    private CallLine money(BigDecimal amount) {
        long whole = amount.longValue();
        long coin =
                amount.subtract(BigDecimal.valueOf(whole))
                        .scaleByPowerOfTen(coins())
                        .longValueExact();
        List<String> said = new ArrayList<>();
        if (whole > 0 || coin == 0) {
            said.addAll(counted("whole", whole));
        }
        if (whole > 0 && coin > 0) {
            said.addAll(words.words("unit." + unit + ".between"));
        }
        if (coin > 0) {
            said.addAll(counted("coin", coin));
        }
        BigDecimal written = coin > 0 ? amount.setScale(coins()) : BigDecimal.valueOf(whole);
        String shown =
                words.text("unit." + unit + ".shown").replace("{0}", Figures.of(written, words));
        return new CallLine(shown, said);
    }

    /// "one dollar", "twelve dollars".
    private List<String> counted(String piece, long count) {
        String key = "unit." + unit + "." + piece;
        boolean isHard = words.text(key + ".meets").equals(Meeting.HARD.word());
        List<String> said =
                new ArrayList<>(
                        number(BigDecimal.valueOf(count), isHard ? Meeting.HARD : Meeting.OPEN));
        boolean hasOne = count == 1 && words.find(key + ".one").isPresent();
        said.addAll(words.words(hasOne ? key + ".one" : key));
        return said;
    }

    private List<String> number(BigDecimal number, Meeting meeting) {
        return words.numbers().say(number.longValue(), wording, meeting);
    }

    /// Whether it is short enough to be said.
    static boolean isSayable(BigDecimal amount) {
        return amount.compareTo(BigDecimal.valueOf(NumberWords.GREATEST)) <= 0;
    }
}
