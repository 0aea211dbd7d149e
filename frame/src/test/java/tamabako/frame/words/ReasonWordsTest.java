package tamabako.frame.words;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.frame.words.Samples.assertSaid;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tamabako.frame.Direction;
import tamabako.frame.Played;
import tamabako.frame.Stroke;
import tamabako.frame.Unworkable.Reason;

/// Every reason says what, where and how to mend it.
class ReasonWordsTest {

    private static final List<Reason> REASONS =
            List.of(
                    new Reason.TooLong("123456789012345", 33, 31),
                    new Reason.FrameTooShort(14, 13),
                    new Reason.NoSuchFrame(40, 31),
                    new Reason.NoSuchUnitRod(12, 9),
                    new Reason.ZeroDivisor("84"),
                    new Reason.NegativeRoot("-9"),
                    new Reason.NegativeOperand("-35"),
                    new Reason.NoSuchRoot(5),
                    new Reason.TooManyPlaces(40, 20),
                    new Reason.NoRows());

    @Test
    void everyReasonIsSaid() {
        assertThat(REASONS).hasSameSizeAs(Reason.class.getPermittedSubclasses());
        assertSaid(
                "reasons",
                words -> {
                    Map<String, String> said = new LinkedHashMap<>();
                    for (Reason reason : REASONS) {
                        said.put(reason.getClass().getSimpleName(), words.why(reason));
                    }
                    return said;
                });
    }

    @Test
    void everyRefusalIsSaid() {
        assertSaid(
                "refusals",
                words -> {
                    Map<String, String> said = new LinkedHashMap<>();
                    Stroke stroke = new Stroke.Upper(1, Direction.TOWARD_BEAM);
                    for (Played.Because because : Played.Because.values()) {
                        Played.Refused refused = new Played.Refused(stroke, because);
                        said.put(because.name(), words.why(refused));
                    }
                    return said;
                });
    }

    @Test
    void englishSaysWhatTheExceptionSays() {
        for (Reason reason : REASONS) {
            assertThat(StepWords.of(Locale.ENGLISH).why(reason)).isEqualTo(reason.message());
        }
    }
}
