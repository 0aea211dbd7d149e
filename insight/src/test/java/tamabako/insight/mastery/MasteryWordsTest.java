package tamabako.insight.mastery;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.OptionalInt;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tamabako.frame.words.Languages;
import tamabako.insight.slip.Move;
import tamabako.testkit.Golden;

class MasteryWordsTest {

    private static MoveMastery move(Move move, Statement statement, OptionalInt problems) {
        return new MoveMastery(
                move, 400, 4, 0.0101, 0.0042, 0.0181, 0.004, 0.005, 0.12, statement, problems);
    }

    private static MoveMastery notMet() {
        Statement open = Statement.NEEDS_EVIDENCE;
        return new MoveMastery(
                Move.CARRY_RUNS_ON, 0, 0, 0, 0, 0, 0, 0, 0.5, open, OptionalInt.empty());
    }

    private static KindMastery kind(String kind, Statement statement, OptionalInt problems) {
        return new KindMastery(kind, 40, 31, 0.77, 0.65, 0.87, 0.3, statement, problems);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "ja"})
    void everyMoveAndKindIsSaidWhateverMayBeSaidOfIt(String language) {
        MasteryWords words = MasteryWords.of(Locale.of(language));
        StringBuilder said = new StringBuilder();
        for (Statement statement : Statement.values()) {
            OptionalInt problems =
                    statement == Statement.NEEDS_EVIDENCE
                            ? OptionalInt.of(40)
                            : OptionalInt.empty();
            for (Move move : Move.values()) {
                said.append(words.say(move(move, statement, problems))).append('\n');
            }
            for (String kind : new String[] {"column", "product", "quotient", "root"}) {
                said.append(words.say(kind(kind, statement, problems))).append('\n');
            }
        }
        Statement open = Statement.NEEDS_EVIDENCE;
        said.append(words.say(move(Move.TAKE_DIRECT, open, OptionalInt.empty()))).append('\n');
        said.append(words.say(notMet())).append('\n');
        said.append(words.say(kind("root", open, OptionalInt.empty()))).append('\n');

        assertThat(said.toString()).doesNotContain("{", "}");
        Golden.assertGolden("mastery." + language + ".txt", said.toString());
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
        return ResourceBundle.getBundle("tamabako.insight.mastery.words", language);
    }
}
