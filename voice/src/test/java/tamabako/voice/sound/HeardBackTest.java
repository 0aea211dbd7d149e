package tamabako.voice.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.voice.clip.Clips;
import tamabako.voice.clip.Piece;
import tamabako.voice.number.Wording;
import tamabako.voice.script.CallScript;

/// Numbers of 16 digits, spoken in less and less time, are read back by an offline recogniser. What
/// it hears is printed, and told in docs/calling.md.
class HeardBackTest {

    /// Few, as listening takes seconds a number; the table in docs/calling.md is of `-Dheard=20`.
    private static final int NUMBERS = Integer.getInteger("heard", 3);

    @TempDir Path folder;

    @BeforeAll
    static void theRecogniserIsInstalled() {
        if (!Recogniser.isInstalled()) {
            System.err.println(
                    "SKIPPED: calls are not read back. Install the packages pocketsphinx and"
                            + " pocketsphinx-en-us.");
        }
        assumeTrue(Recogniser.isInstalled());
    }

    @ParameterizedTest
    @CsvSource({
        "en, en, FULL, 60, 0.9",
        "en, en, FULL, 6.0, 0.85",
        "en, en, FULL, 5.0, 0.7",
        "en, en, FULL, 3.85, 0.3",
        "groups, en, GROUPS, 60, 0.85",
        "groups, en, GROUPS, 3.85, 0.75",
        "groups, en, GROUPS, 2.85, 0.6",
        "ja, ja, FULL, 60, 0.55",
        "ja, ja, FULL, 5.0, 0.45",
        "ja, ja, FULL, 3.85, 0.25"
    })
    void theDigitsAreHeard(
            String grammar, String language, Wording wording, double seconds, double least)
            throws IOException, InterruptedException {
        List<BigDecimal> numbers = Calls.rows(7, NUMBERS + 1, 16, 16, false);
        CallScript script = Calls.script(language, wording, numbers);
        List<float[]> sounds = new ArrayList<>();
        double hurry = 0;
        double length = 0;
        for (int row = 0; row < NUMBERS; row++) {
            Joiner joiner = joiner(script, row);
            int room = (int) (seconds * Clips.RATE);
            sounds.add(alone(joiner.fit(room)));
            hurry += Math.max(1, joiner.withoutRests() / (double) room) / NUMBERS;
            length += Math.min(room, joiner.natural()) / (double) Clips.RATE / NUMBERS;
        }

        List<String> heard = new Recogniser(folder, grammar).hear(sounds);

        UnaryOperator<String> reading =
                switch (grammar) {
                    case "en" -> Digits::english;
                    case "groups" -> Digits::groups;
                    default -> Digits::japanese;
                };
        double share = 0;
        for (int row = 0; row < NUMBERS; row++) {
            String said = numbers.get(row).toPlainString();
            share += Digits.share(said, reading.apply(heard.get(row))) / NUMBERS;
        }
        System.err.printf(
                Locale.ROOT,
                "HEARD %s %s: %.2f s, hurry %.2f, share of digits %.3f%n",
                language,
                wording.word(),
                length,
                hurry,
                share);
        assertThat(share).isGreaterThanOrEqualTo(least);
    }

    /// What was heard is turned into figures by code of the test: it reads right what is right.
    @Test
    void wordsAreTurnedBackIntoFigures() {
        assertThat(Digits.english("two million four hundred and five thousand sixty one"))
                .isEqualTo("2405061");
        assertThat(Digits.groups("twelve three forty five two hundred oh oh six oh seventy"))
                .isEqualTo("12345200006070");
        assertThat(Digits.japanese("sanbyaku hacho rokusen nijuu oku issen man kyuu en nari"))
                .isEqualTo("308602010000009");
        assertThat(Digits.japanese("roppyaku nijucho hassen go en nari"))
                .isEqualTo("620000000008005");
        assertThat(Digits.share("1234", "1294")).isEqualTo(0.75);
    }

    private static Joiner joiner(CallScript script, int row) {
        List<Piece> pieces =
                Clips.find(script.language())
                        .orElseThrow()
                        .say(script.rows().get(row).words())
                        .orElseThrow();
        return new Joiner(pieces);
    }

    /// The speech with silence around it.
    private static float[] alone(float[] speech) {
        Loudness.even(speech);
        float[] padded = new float[speech.length + 8_000];
        System.arraycopy(speech, 0, padded, 4_000, speech.length);
        return padded;
    }
}
