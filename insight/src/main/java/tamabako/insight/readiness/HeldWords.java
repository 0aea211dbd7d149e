package tamabako.insight.readiness;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tamabako.frame.words.Phrases;

/// Says how well forecasts held, in sentences for a teacher, in one language.
public final class HeldWords {

    private final Phrases phrases;

    private HeldWords(Phrases phrases) {
        this.phrases = phrases;
    }

    /// The words of the language of `locale`, or English where there is no file for it.
    public static HeldWords of(Locale locale) {
        return new HeldWords(Phrases.of(HeldWords.class, locale));
    }

    /// The language that is spoken.
    public Locale language() {
        return phrases.language();
    }

    /// All there is to say: how many passed of those foretold, whether the forecasts are to be
    /// trusted, and from when on they are corrected.
    public List<String> say(ForecastsHeld held) {
        int exams = held.exams();
        if (!held.isTold()) {
            String key = exams == 0 ? "held.none" : exams == 1 ? "held.one" : "held.few";
            return List.of(
                    phrases.say(key, Map.of("exams", exams, "needed", ForecastsHeld.NEEDED)));
        }
        List<String> said = new ArrayList<>();
        said.add(
                phrases.say(
                        "held.all",
                        Map.of(
                                "exams", exams,
                                "foretold", Math.round(held.foretold()),
                                "passed", held.passed())));
        said.add(
                phrases.say(
                        switch (held.verdict()) {
                            case AS_TOLD -> "held.as-told";
                            case TOLD_TOO_HIGH -> "held.too-high";
                            case TOLD_TOO_LOW -> "held.too-low";
                        },
                        Map.of()));
        said.add(
                exams < Recalibration.NEEDED
                        ? phrases.say("held.uncorrected", Map.of("needed", Recalibration.NEEDED))
                        : phrases.say("held.corrected", Map.of("exams", exams)));
        return said;
    }

    /// One group of exams: so many foretold, so many passed.
    public String say(ForecastsHeld.Group group) {
        return phrases.say(
                "held.group",
                Map.of(
                        "told", ReadinessWords.percent(group.told()),
                        "exams", group.exams(),
                        "passed", group.passed()));
    }
}
