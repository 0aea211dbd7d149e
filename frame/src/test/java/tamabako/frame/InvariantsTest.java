package tamabako.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// What cannot be: each rule of the core refuses what breaks it.
class InvariantsTest {

    private static final Cause ENTRY = new Cause.Row(1, 0);
    private static final Stroke.Upper FIVE_DOWN = new Stroke.Upper(0, Direction.TOWARD_BEAM);
    private static final Stroke.Lower TWO_OFF = new Stroke.Lower(0, 2, Direction.AWAY_FROM_BEAM);

    @ParameterizedTest
    @CsvSource({"-1, 0", "0, -1"})
    void aRodHoldsNoFewerThanNoBeads(int upper, int lower) {
        assertRefused(() -> new Rod(upper, lower), "A rod cannot hold");
    }

    @ParameterizedTest
    @CsvSource({"-1", "10"})
    void aRodShowsADigit(int digit) {
        assertRefused(() -> Rod.showing(digit), "A rod shows a digit from 0 to 9, not " + digit);
    }

    @Test
    void aRodIsPlainOnlyAsItsDigitIsShown() {
        for (int upper = 0; upper <= 2; upper++) {
            for (int lower = 0; lower <= 5; lower++) {
                Rod rod = new Rod(upper, lower);
                boolean plain = rod.value() <= 9 && Rod.showing(rod.value()).equals(rod);
                assertThat(rod.isPlain()).as("%s", rod).isEqualTo(plain);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"0", "6"})
    void aFingerPushesOneToFiveBeads(int beads) {
        assertRefused(
                () -> new Stroke.Lower(0, beads, Direction.TOWARD_BEAM),
                "A finger pushes 1 to 5 lower beads, not " + beads);
    }

    @Test
    void aMotionHasOneOrTwoStrokes() {
        assertRefused(() -> new Motion(List.of()), "one or two strokes, not 0");
        assertRefused(
                () -> new Motion(List.of(FIVE_DOWN, TWO_OFF, FIVE_DOWN)),
                "one or two strokes, not 3");
    }

    @Test
    void onlyAnUpperAndALowerStrokeOnOneRodGoTogether() {
        Stroke elsewhere = new Stroke.Lower(1, 2, Direction.AWAY_FROM_BEAM);

        assertThat(new Motion(List.of(FIVE_DOWN, TWO_OFF)).rod()).isZero();
        assertRefused(() -> new Motion(List.of(FIVE_DOWN, FIVE_DOWN)), "go together");
        assertRefused(() -> new Motion(List.of(TWO_OFF, TWO_OFF)), "go together");
        assertRefused(() -> new Motion(List.of(FIVE_DOWN, elsewhere)), "go together");
    }

    @ParameterizedTest
    @CsvSource({"0", "10", "-10"})
    void aStepAddsOrTakesADigit(int digit) {
        assertRefused(
                () -> step(0, digit, Technique.DIRECT, 3, 6, sweep()),
                "A step adds or takes 1 to 9, not " + digit);
    }

    @Test
    void aStepIsDoneByTheTechniqueThatItNames() {
        assertThat(step(0, 3, Technique.FIVE_COMPLEMENT, 3, 6, sweep()).change()).isEqualTo(3);
        assertRefused(
                () -> step(0, 3, Technique.DIRECT, 3, 6, sweep()),
                "is FIVE_COMPLEMENT, not DIRECT");
        assertRefused(
                () -> step(0, -3, Technique.TEN_WITH_FIVE, 1, 8, List.of()),
                "is TEN_COMPLEMENT, not TEN_WITH_FIVE");
    }

    @Test
    void aStepChangesItsRodByItsDigit() {
        assertRefused(
                () -> step(0, 3, Technique.FIVE_COMPLEMENT, 3, 7, sweep()),
                "+3 by FIVE_COMPLEMENT");
        assertRefused(
                () -> step(0, 8, Technique.TEN_COMPLEMENT, 4, 3, List.of()),
                "+8 by TEN_COMPLEMENT");
    }

    @Test
    void aStepMovesBeadsOnItsOwnRod() {
        assertRefused(
                () -> step(1, 3, Technique.FIVE_COMPLEMENT, 3, 6, sweep()),
                "on its own rod 1, not on 0");
    }

    @Test
    void aStepIsMadeByItsMotions() {
        assertRefused(
                () -> step(0, 3, Technique.FIVE_COMPLEMENT, 3, 6, List.of(Motion.of(FIVE_DOWN))),
                "These motions lead from");
        assertRefused(
                () -> step(0, 3, Technique.FIVE_COMPLEMENT, 3, 6, List.of()),
                "These motions lead from");
    }

    @Test
    void aFrameHasOneToThirtyOneRods() {
        assertRefused(() -> new Frame(FrameKind.MODERN, 0, List.of()), "1 to 31 rods, not 0");
        assertRefused(
                () -> new Frame(FrameKind.MODERN, 0, Collections.nCopies(32, Rod.CLEAR)),
                "1 to 31 rods, not 32");
        assertThat(Frame.clear(FrameKind.MODERN, -3, 27).rods()).hasSize(31);
    }

    @ParameterizedTest
    @CsvSource({"MODERN, 0, 5", "MODERN, 2, 0", "OLDER, 0, 6", "OLDER, 2, 0", "SUANPAN, 3, 0"})
    void aFrameHoldsOnlyRodsOfItsKind(FrameKind kind, int upper, int lower) {
        assertRefused(() -> new Frame(kind, 0, List.of(new Rod(upper, lower))), "has no rod like");
        assertRefused(
                () -> Frame.clear(kind, 0, 2).with(1, new Rod(upper, lower)), "has no rod like");
    }

    @Test
    void aFrameHasOnlyItsRods() {
        Frame frame = Frame.clear(FrameKind.MODERN, -1, 2);

        assertThat(frame.has(-1) && frame.has(2)).isTrue();
        assertThat(frame.has(-2) || frame.has(3)).isFalse();
        assertRefused(() -> frame.rod(3), "rods -1 to 2, not 3");
        assertRefused(() -> frame.with(-2, Rod.CLEAR), "rods -1 to 2, not -2");
    }

    @Test
    void aFrameDoesNotChangeWithTheListItWasMadeOf() {
        List<Rod> rods = new ArrayList<>(List.of(Rod.showing(4)));
        Frame frame = new Frame(FrameKind.MODERN, 0, rods);

        rods.set(0, Rod.showing(9));

        assertThat(frame.digits()).isEqualTo("4");
    }

    private static List<Motion> sweep() {
        return List.of(Motion.of(FIVE_DOWN, TWO_OFF));
    }

    private static Step step(
            int rod, int digit, Technique technique, int before, int after, List<Motion> motions) {
        return new Step(
                rod, digit, technique, ENTRY, Rod.showing(before), Rod.showing(after), motions);
    }

    private static void assertRefused(ThrowingCallable made, String because) {
        assertThatThrownBy(made)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(because);
    }
}
