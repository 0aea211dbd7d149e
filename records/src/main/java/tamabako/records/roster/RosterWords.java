package tamabako.records.roster;

import java.util.Locale;
import java.util.Map;
import tamabako.frame.words.Languages;
import tamabako.frame.words.Phrases;
import tamabako.problems.words.Sayable;

/// Says in one language what has to do with rosters.
public final class RosterWords {

    private final Phrases phrases;

    private RosterWords(Phrases phrases) {
        this.phrases = phrases;
    }

    /// The words of the language of `locale`, or English where there is no file for it.
    public static RosterWords of(Locale locale) {
        return new RosterWords(Phrases.of(RosterWords.class, Languages.nearest(locale)));
    }

    /// Where, what, and how to mend it.
    public String say(Told told) {
        String where = where(told.place());
        String what = say(told.remark());
        return where.isEmpty() ? what : phrases.say("told", Map.of("where", where, "what", what));
    }

    /// The words for a field, a kind of file or a remark.
    public String say(Sayable sayable) {
        return phrases.say(sayable.template(), sayable.blanks());
    }

    /// A value of a field as a reader wants it: a language by its name, yes and no as words.
    public String value(Field field, String value) {
        if (value.isEmpty()) {
            return value;
        }
        return switch (field) {
            case LANGUAGE -> Locale.forLanguageTag(value).getDisplayLanguage(phrases.language());
            case NO_FLASHING -> phrases.say("say." + value, Map.of());
            case EXTRA_TIME, PACE -> value + " %";
            default -> value;
        };
    }

    /// The phrase for `key`, filled from `values`.
    String say(String key, Map<String, ?> values) {
        return phrases.say(key, values);
    }

    /// A plain word.
    String word(String key) {
        return phrases.say(key, Map.of());
    }

    private String where(Place place) {
        if (place.line() == 0) {
            return place.file();
        }
        String line =
                place.column() == 0
                        ? phrases.say("where.line", Map.of("line", place.line()))
                        : phrases.say(
                                place.heading().isEmpty() ? "where.cell" : "where.column",
                                Map.of(
                                        "line",
                                        place.line(),
                                        "column",
                                        place.column(),
                                        "heading",
                                        place.heading()));
        return place.file().isEmpty()
                ? line
                : phrases.say("where.file", Map.of("file", place.file(), "line", line));
    }
}
