package tamabako.voice.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.voice.clip.Clips;
import tamabako.voice.clip.Piece;
import tamabako.voice.number.Wording;
import tamabako.voice.script.CallLine;
import tamabako.voice.script.CallScript;

class JoinerTest {

    /// A click is a step that speech itself does not have: where two clips meet, samples next to
    /// one another differ no more than they do inside those clips.
    @ParameterizedTest
    @CsvSource({"en, FULL", "en, GROUPS", "ja, FULL"})
    void nothingClicksWhereClipsMeet(String language, Wording wording) {
        CallScript script = Calls.script(language, wording, Calls.rows(3, 40, 5, 16, true));
        int meetings = 0;
        for (CallLine row : script.rows()) {
            List<Piece> pieces =
                    Clips.find(script.language()).orElseThrow().say(row.words()).orElseThrow();
            Joiner joiner = new Joiner(pieces);
            float[] joined = joiner.fit(joiner.withoutRests());
            int end = 0;
            float[] before = {};
            for (Piece piece : pieces) {
                if (piece instanceof Piece.Spoken(float[] clip)) {
                    int start = before.length == 0 ? 0 : end - 2 * Clips.MARGIN;
                    double allowed = Math.max(greatestJump(before), greatestJump(clip)) + 0.002;
                    for (int i = Math.max(1, start); i < start + 2 * Clips.MARGIN; i++) {
                        assertThat(Math.abs(joined[i] - joined[i - 1]))
                                .isLessThanOrEqualTo((float) allowed);
                    }
                    meetings += before.length == 0 ? 0 : 1;
                    end = start + clip.length;
                    before = clip;
                }
            }
            assertThat(end).isEqualTo(joined.length);
        }
        assertThat(meetings).isGreaterThan(150);
    }

    private static double greatestJump(float[] clip) {
        double jump = 0;
        for (int i = 1; i < clip.length; i++) {
            jump = Math.max(jump, Math.abs(clip[i] - clip[i - 1]));
        }
        return jump;
    }
}
