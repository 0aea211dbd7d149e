package tamabako.insight.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tamabako.frame.words.Languages;
import tamabako.testkit.Golden;

class RuleWordsTest {

    @ParameterizedTest
    @ValueSource(strings = {"en", "ja"})
    void everyRuleIsSaid(String language) {
        RuleWords words = RuleWords.of(Locale.of(language));
        StringBuilder said = new StringBuilder();
        for (LastingRule rule : LastingRule.known()) {
            said.append(rule.word()).append(": ").append(words.say(rule)).append('\n');
        }

        assertThat(said.toString()).doesNotContain("{", "}");
        Golden.assertGolden("rules." + language + ".txt", said.toString());
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
        return ResourceBundle.getBundle("tamabako.insight.rule.words", language);
    }
}
