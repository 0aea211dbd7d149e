package tamabako.frame.words;

import static org.junit.jupiter.api.Assertions.assertAll;
import static tamabako.testkit.Golden.assertGolden;

import java.util.Map;
import java.util.function.Function;
import tamabako.frame.Cause;
import tamabako.frame.Frame;
import tamabako.frame.FrameKind;
import tamabako.frame.Habits;
import tamabako.frame.Hand;
import tamabako.frame.Rod;
import tamabako.frame.Step;

/// Steps to speak of, and how what is said of them is kept.
final class Samples {

    private Samples() {}

    /// The step on the unit rod when `digit` is added to `held` there, or taken from it. The rods
    /// left of it have room and beads enough.
    static Step step(Rod held, int digit, Cause cause) {
        Frame frame = Frame.clear(FrameKind.SUANPAN, 0, 1).with(0, held).with(1, Rod.showing(3));
        Hand hand = new Hand(frame, Habits.COMMON);
        if (digit > 0) {
            hand.add(0, digit, cause);
        } else {
            hand.take(0, -digit, cause);
        }
        return hand.steps().stream().filter(step -> step.rod() == 0).findFirst().orElseThrow();
    }

    /// Keeps what `say` says in every language: one line for what is spoken of, one for the words.
    static void assertSaid(String name, Function<StepWords, Map<String, String>> say) {
        assertAll(
                Languages.all().stream()
                        .map(language ->
                                () -> {
                                    StringBuilder said = new StringBuilder();
                                    say.apply(StepWords.of(language))
                                            .forEach((of, words) ->
                                                    said.append(of)
                                                            .append("\n    ")
                                                            .append(words)
                                                            .append('\n'));
                                    assertGolden(
                                            "said/%s.%s.txt"
                                                    .formatted(name, language.getLanguage()),
                                            said.toString());
                                }));
    }
}
