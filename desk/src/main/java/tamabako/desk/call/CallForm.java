package tamabako.desk.call;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tamabako.desk.sheet.Form;
import tamabako.desk.web.Request;
import tamabako.problems.HalfWidth;
import tamabako.voice.number.Wording;
import tamabako.voice.script.CallWish;
import tamabako.voice.script.CallWords;
import tamabako.voice.sound.Pace;

/// The form of the page "Call", read.
public final class CallForm {

    /// Where the columns come from.
    public static final List<String> SOURCES = List.of("made", "climb", "sheet");

    /// In which languages is called.
    public static final List<String> LANGUAGES = List.of("ja", "en-US", "en-GB");

    public static final List<String> WORDINGS = List.of("full", "groups", "figures");

    /// How the pace is given: seconds a row, digits a second, a gap after each row.
    public static final List<String> PACINGS = List.of("s", "d", "+");

    public static final List<String> UNITS = List.of("usual", "none", "JPY", "USD", "EUR");

    /// How pupils drop out: not at all, until one is left, or until the places are settled.
    public static final List<String> ROUNDS = List.of("none", "standing", "best");

    public static final List<String> METHODS = List.of("frame", "mental");

    /// The fields of an address.
    static final Set<String> NAMES =
            Set.of(
                    "from",
                    "sheet",
                    "least",
                    "most",
                    "rows",
                    "minus",
                    "count",
                    "language",
                    "wording",
                    "pacing",
                    "pace",
                    "unit",
                    "clearing",
                    "round",
                    "method",
                    "seed");

    private static final int MOST_ROWS = 30;
    private static final int MOST_DIGITS = 16;
    private static final int MOST_CALLS = 20;

    private final Form form;

    CallForm(Request request) {
        this.form = new Form(request, usual(request.words().language()));
    }

    private static Map<String, String> usual(Locale language) {
        return Map.ofEntries(
                Map.entry("from", "made"),
                Map.entry("sheet", ""),
                Map.entry("least", "2"),
                Map.entry("most", "3"),
                Map.entry("rows", "10"),
                Map.entry("minus", "0"),
                Map.entry("count", "5"),
                Map.entry("language", language.getLanguage().equals("ja") ? "ja" : "en-US"),
                Map.entry("wording", "full"),
                Map.entry("pacing", "+"),
                Map.entry("pace", "1"),
                Map.entry("unit", "usual"),
                Map.entry("round", "none"),
                Map.entry("method", "frame"));
    }

    /// The form itself, for its fields and faults.
    public Form form() {
        return form;
    }

    /// Where the columns come from: one of [#SOURCES].
    String source() {
        return form.word("from", SOURCES);
    }

    int leastDigits() {
        return form.whole("least", 1, MOST_DIGITS);
    }

    int mostDigits() {
        return form.whole("most", 1, MOST_DIGITS);
    }

    int rows() {
        return form.whole("rows", 2, MOST_ROWS);
    }

    int minusRows() {
        return form.whole("minus", 0, MOST_ROWS);
    }

    int count() {
        return form.whole("count", 1, MOST_CALLS);
    }

    /// The caller's words.
    CallWords words() {
        Locale language = Locale.forLanguageTag(form.word("language", LANGUAGES));
        return CallWords.find(language).orElseThrow();
    }

    CallWish wish() {
        String unit = form.word("unit", UNITS);
        Wording wording = Wording.valueOf(form.word("wording", WORDINGS).toUpperCase(Locale.ROOT));
        return new CallWish(
                wording,
                unit.equals("usual") ? Optional.empty() : Optional.of(unit),
                form.isTicked("clearing", "yes"));
    }

    /// The pace that is asked for; a climb has its own.
    ///
    /// @param says the words for a pace that cannot be read
    Pace pace(String says) {
        String kind = form.word("pacing", PACINGS);
        String value = HalfWidth.of(form.text("pace")).strip();
        Optional<Pace> read = Pace.parse(kind.equals("+") ? "+" + value : value + kind);
        if (read.isEmpty()) {
            form.blame("pace", says);
        }
        return read.orElse(new Pace.Unhurried(1));
    }

    /// How pupils drop out: one of [#ROUNDS].
    String round() {
        return form.word("round", ROUNDS);
    }

    /// On the frame or in the head: one of [#METHODS].
    String method() {
        return form.word("method", METHODS);
    }
}
