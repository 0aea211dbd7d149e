package tamabako.insight.rule;

import java.util.Locale;
import java.util.Map;
import tamabako.frame.words.Languages;
import tamabako.frame.words.Phrases;

/// Says wrong rules in sentences for a teacher, in one language.
public final class RuleWords {

    private final Locale language;
    private final Phrases phrases;

    private RuleWords(Locale language) {
        this.language = language;
        this.phrases = Phrases.of(RuleWords.class, language);
    }

    /// The words of the language of `locale`, or English where there is no file for it.
    public static RuleWords of(Locale locale) {
        return new RuleWords(Languages.nearest(locale));
    }

    /// The language that is spoken.
    public Locale language() {
        return language;
    }

    /// What the pupil does, and what is right: "To add 6 over ten, takes 6 instead of 4."
    public String say(LastingRule rule) {
        String key = (rule.adding() ? "add." : "take.") + key(rule);
        return phrases.say(
                key,
                Map.of(
                        "digit", rule.digit(),
                        "right", rule.complement(),
                        "used", Math.abs(rule.used())));
    }

    private static String key(LastingRule rule) {
        return switch (rule.part()) {
            case CARRY -> "carry";
            case RUNNING_CARRY -> "running-carry";
            case FIVE_BEAD -> "five-bead";
            case TEN_COMPLEMENT ->
                    rule.used() < 0 ? "ten-reversed" : rule.used() == 0 ? "ten-nothing" : "ten";
            case FIVE_COMPLEMENT -> rule.used() == 0 ? "five-nothing" : "five";
        };
    }
}
