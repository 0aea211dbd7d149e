package tamabako.records.roster;

import java.text.Normalizer;
import java.time.Year;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tamabako.frame.words.Languages;

/// What cells of a roster mean.
final class Cells {

    /// The longest name or heading of a group that is taken, in characters.
    static final int LONGEST = 60;

    private static final Pattern SHEET_MISTAKE =
            Pattern.compile("#(REF!|NAME\\?|VALUE!|DIV/0!|NULL!|NUM!|N/A|SPILL!|CALC!)");

    private static final Set<String> YES =
            Set.of("yes", "y", "true", "1", "x", "はい", "有", "あり", "○", "〇", "◯", "する");
    private static final Set<String> NO =
            Set.of("no", "n", "false", "0", "いいえ", "無", "なし", "×", "✕", "しない");

    private Cells() {}

    /// Why nothing like that can stand in a cell, whatever it means.
    static Optional<Remark> flaw(Field field, String cell) {
        if (SHEET_MISTAKE.matcher(cell).matches()) {
            return Optional.of(new Remark.SheetMistake(cell));
        }
        int characters = cell.codePointCount(0, cell.length());
        if (characters > LONGEST) {
            return Optional.of(new Remark.TooLong(characters, LONGEST));
        }
        return field == Field.NO_FLASHING || field == Field.BORN
                ? Optional.empty()
                : cell.codePoints()
                        .filter(letter -> Character.isISOControl(letter) || letter == 0xFFFD)
                        .mapToObj(
                                letter -> (Remark) new Remark.OddLetter("U+%04X".formatted(letter)))
                        .findFirst();
    }

    /// The text under which two ways of writing the same name are one: wide and narrow letters, and
    /// blanks of any kind.
    static String key(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFKC)
                .replaceAll("[\\s\\p{Z}]+", " ")
                .strip();
    }

    /// Whether a cell says yes; empty where it says neither yes nor no.
    static Optional<Boolean> yes(String cell) {
        String word = key(cell).toLowerCase(Locale.ROOT);
        if (YES.contains(word)) {
            return Optional.of(true);
        }
        return NO.contains(word) ? Optional.of(false) : Optional.empty();
    }

    /// A whole number of per cent; empty where it is none from `least` to `most`.
    static Optional<Integer> percent(String cell, int least, int most) {
        String figures = key(cell).replaceFirst("\\s*%$", "");
        if (!figures.matches("\\d{1,4}")) {
            return Optional.empty();
        }
        int percent = Integer.parseInt(figures);
        return percent < least || percent > most ? Optional.empty() : Optional.of(percent);
    }

    /// A language that the program speaks, by its code or by its name in any such language.
    static Optional<Locale> language(String cell) {
        String word = key(cell).toLowerCase(Locale.ROOT);
        return Languages.all().stream()
                .filter(language ->
                        word.equals(language.getLanguage())
                                || word.startsWith(language.getLanguage() + "-")
                                || word.equals(language.getISO3Language())
                                || Languages.all().stream()
                                        .map(language::getDisplayLanguage)
                                        .anyMatch(
                                                name -> name.toLowerCase(Locale.ROOT).equals(word)))
                .findFirst();
    }

    /// The names of all languages, each in itself.
    static String languages() {
        return Languages.all().stream()
                .map(language ->
                        "%s (%s)"
                                .formatted(
                                        language.getLanguage(),
                                        language.getDisplayLanguage(language)))
                .collect(Collectors.joining(", "));
    }

    /// The year of birth that a cell tells; empty where it tells none up to `thisYear`.
    static Optional<BirthYear> born(String cell, Year thisYear) {
        return BirthYear.parse(key(cell), thisYear);
    }
}
