package tamabako.insight.pace;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import tamabako.frame.words.Languages;
import tamabako.frame.words.Phrases;
import tamabako.insight.mastery.MasteryWords;

/// Says how fast a pupil works in sentences for a teacher, in one language.
public final class PaceWords {

    private final Locale language;
    private final Phrases phrases;
    private final MasteryWords moves;

    private PaceWords(Locale language) {
        this.language = language;
        this.phrases = Phrases.of(PaceWords.class, language);
        this.moves = MasteryWords.of(language);
    }

    /// The words of the language of `locale`, or English where there is no file for it.
    public static PaceWords of(Locale locale) {
        return new PaceWords(Languages.nearest(locale));
    }

    /// The language that is spoken.
    public Locale language() {
        return language;
    }

    /// The name of a part of the work.
    public String name(Part part) {
        return part.move()
                .map(moves::name)
                .orElseGet(() -> phrases.say("part." + part.word(), Map.of()));
    }

    /// How fast the pupil is altogether.
    public String say(PupilPace pace) {
        if (!pace.isEnough()) {
            return phrases.say(
                    "altogether.needs-evidence",
                    Map.of("problems", pace.problems(), "enough", PupilPace.ENOUGH));
        }
        PupilPace.Altogether all = pace.altogether();
        Map<String, Object> values = new HashMap<>();
        values.put("times", figure(all.times()));
        values.put("low", figure(all.low()));
        values.put("high", figure(all.high()));
        return phrases.say("altogether." + than(all.low(), all.high()), values);
    }

    /// How fast the pupil is in one part beside the pupil's other work.
    public String say(PartPace part) {
        return phrases.say(
                "part." + than(part.besideLow(), part.besideHigh()),
                Map.of("name", name(part.part())));
    }

    private static String than(double low, double high) {
        return low > 1 ? "longer" : high < 1 ? "shorter" : "like";
    }

    private static String figure(double times) {
        return String.format(Locale.ROOT, "%.2f", times);
    }
}
