package tamabako.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/// A trace exists only if its strokes replay to its end.
class TraceTest {

    private static final Cause TENS = new Cause.Row(2, 1);
    private static final Cause ONES = new Cause.Row(2, 0);

    @Test
    void itsStatesAreTheFrameAfterEachStep() {
        assertThat(digits(sum().states())).isEqualTo("034 004 104 102 112");
    }

    @Test
    void itsRestsAreTheFrameAfterEachEntry() {
        assertThat(digits(sum().rests())).isEqualTo("034 104 112");
    }

    @Test
    void aTraceWithoutStepsIsAtRest() {
        Frame frame = frame(34);

        assertThat(new Trace(frame, List.of(), frame).rests()).containsExactly(frame);
        assertRefused(frame, List.of(), frame(35), "lead to 034, not to 035");
    }

    /// Each stroke of 34 + 78 is made with another count of beads, or the other way.
    @Test
    void oneStrokeAlteredIsRefused() {
        Trace sum = sum();
        int altered = 0;
        for (int i = 0; i < sum.steps().size(); i++) {
            Step step = sum.steps().get(i);
            Stroke stroke = step.strokes().getFirst();
            for (int beads = 1; beads <= 4; beads++) {
                for (Direction direction : Direction.values()) {
                    Stroke other = new Stroke.Lower(step.rod(), beads, direction);
                    if (!other.equals(stroke)) {
                        assertThatThrownBy(() -> with(step, other))
                                .isInstanceOf(IllegalArgumentException.class);
                        altered++;
                    }
                }
            }
        }
        assertThat(altered).isEqualTo(4 * 7);
    }

    @Test
    void aStepLeftOutOrSwappedIsRefused() {
        Trace sum = sum();
        for (int i = 0; i < sum.steps().size(); i++) {
            List<Step> without = new ArrayList<>(sum.steps());
            without.remove(i);
            assertThatThrownBy(() -> new Trace(sum.start(), without, sum.end()))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        List<Step> backward = sum.steps().reversed();
        assertRefused(sum.start(), backward, sum.end(), "begins on");
    }

    @Test
    void aStepMustBeginWhereItsRodStands() {
        Trace sum = sum();

        assertRefused(frame(44), sum.steps(), sum.end(), "begins on");
    }

    @Test
    void aStrokeThatTheFrameHasNoBeadForIsRefused() {
        Hand older =
                new Hand(
                        Frame.clear(FrameKind.SUANPAN, 0, 1).with(0, new Rod(2, 0)), Habits.COMMON);
        older.take(0, 3, ONES);
        Step step = older.steps().getFirst();
        Step early =
                new Step(
                        0,
                        -3,
                        step.technique(),
                        ONES,
                        step.before(),
                        step.after(),
                        List.of(
                                Motion.of(new Stroke.Lower(0, 5, Direction.TOWARD_BEAM)),
                                Motion.of(new Stroke.Upper(0, Direction.AWAY_FROM_BEAM)),
                                Motion.of(new Stroke.Lower(0, 1, Direction.TOWARD_BEAM)),
                                Motion.of(new Stroke.Lower(0, 4, Direction.AWAY_FROM_BEAM))));

        assertRefused(
                older.trace().start(), List.of(early), older.frame(), "NO_BEAD_LEFT_TO_BRING");
    }

    @Test
    void aWorkingBeginsOnTheFrameThatWasSet() {
        Trace sum = sum();
        Frame frame = frame(35);
        Trace setting = new Trace(frame, List.of(), frame);
        Outcome outcome = Outcome.of(sum.end().value());

        assertThatThrownBy(() -> new Working(setting, sum, outcome))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The working begins on 034, but 035 was set.");
    }

    @Test
    void aPlainOutcomeHasNothingLeftAndNoLoan() {
        Outcome outcome = Outcome.of(sum().end().value());

        assertThat(outcome.remainder()).isEqualTo(Optional.empty());
        assertThat(outcome.loan()).isEqualTo(OptionalInt.empty());
        assertThat(outcome.answer()).isEqualByComparingTo("112");
    }

    private static Trace sum() {
        Hand hand = new Hand(frame(34), Habits.COMMON);
        hand.add(1, 7, TENS);
        hand.add(0, 8, ONES);
        return hand.trace();
    }

    private static Frame frame(int number) {
        return Frame.clear(FrameKind.MODERN, 0, 2)
                .with(1, Rod.showing(number / 10))
                .with(0, Rod.showing(number % 10));
    }

    private static Step with(Step step, Stroke stroke) {
        return new Step(
                step.rod(),
                step.digit(),
                step.technique(),
                step.cause(),
                step.before(),
                step.after(),
                List.of(Motion.of(stroke)));
    }

    private static String digits(List<Frame> frames) {
        return String.join(" ", frames.stream().map(Frame::digits).toList());
    }

    private static void assertRefused(Frame start, List<Step> steps, Frame end, String because) {
        assertThatThrownBy(() -> new Trace(start, steps, end))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(because);
    }
}
