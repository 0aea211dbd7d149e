package tamabako.insight.pace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tamabako.frame.words.Languages;
import tamabako.testkit.Golden;

class PaceWordsTest {

    private static PartPace part(Part part, double low, double high) {
        return new PartPace(part, 1.2, 1.1, 1.3, low, high, 0.6, 30, true);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "ja"})
    void everyPartIsSaidWhetherSlowOrFast(String language) {
        PaceWords words = PaceWords.of(Locale.of(language));
        StringBuilder said = new StringBuilder();
        for (Part part : Part.values()) {
            said.append(words.say(part(part, 1.1, 1.4))).append('\n');
        }
        said.append(words.say(part(Part.TABLE, 0.8, 0.9))).append('\n');
        said.append(words.say(part(Part.TABLE, 0.8, 1.2))).append('\n');
        PupilPace unknown = new PaceTally().told(PacePopulation.shipped());
        said.append(words.say(unknown)).append('\n');

        assertThat(said.toString()).doesNotContain("{", "}");
        Golden.assertGolden("pace." + language + ".txt", said.toString());
    }

    @Test
    void everyLanguageHasTheSamePhrases() {
        for (Locale language : Languages.all()) {
            assertThat(phrases(language).keySet())
                    .as(language.toString())
                    .isEqualTo(phrases(Locale.ENGLISH).keySet());
        }
    }

    private static ResourceBundle phrases(Locale language) {
        return ResourceBundle.getBundle("tamabako.insight.pace.words", language);
    }
}
