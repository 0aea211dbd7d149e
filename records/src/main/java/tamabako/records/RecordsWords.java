package tamabako.records;

import java.util.Locale;
import java.util.Map;
import tamabako.frame.words.Languages;
import tamabako.frame.words.Phrases;
import tamabako.problems.words.Sayable;

/// Says in one language what has to do with the class book.
public final class RecordsWords {

    private final Phrases phrases;

    private RecordsWords(Phrases phrases) {
        this.phrases = phrases;
    }

    /// The words of the language of `locale`, or English where there is no file for it.
    public static RecordsWords of(Locale locale) {
        return new RecordsWords(Phrases.of(RecordsWords.class, Languages.nearest(locale)));
    }

    /// What, where and how to mend it.
    public String say(Sayable reason) {
        return say(reason.template(), reason.blanks());
    }

    /// The phrase for `key`, filled from `values`.
    public String say(String key, Map<String, ?> values) {
        return phrases.say(key, values);
    }
}
