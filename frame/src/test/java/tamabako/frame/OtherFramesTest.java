package tamabako.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/// The older soroban (1:5) and the suanpan (2:5), whose rods can hold more than 9.
///
/// The hand works with the beads as they stand and needs no tidying step: common practice, no
/// published source.
class OtherFramesTest {

    private static final Cause ENTRY = new Cause.Row(1, 0);

    @ParameterizedTest
    @CsvSource({"MODERN, 9, 10", "OLDER, 10, 12", "SUANPAN, 15, 18"})
    void aRodShowsFromZeroToItsCapacity(FrameKind kind, int capacity, int looks) {
        assertThat(kind.capacity()).isEqualTo(capacity);
        assertThat(looks(kind)).hasSize(looks);
        assertThat(looks(kind).stream().map(Rod::value).distinct().sorted().toList())
                .isEqualTo(java.util.stream.IntStream.rangeClosed(0, capacity).boxed().toList());
        assertThat(kind.holds(new Rod(kind.upperBeads() + 1, 0))).isFalse();
        assertThat(kind.holds(new Rod(0, kind.lowerBeads() + 1))).isFalse();
    }

    /// Rods are written upper.lower, as they stand before and after.
    @ParameterizedTest
    @CsvSource({
        // The upper bead comes down and the rest of the lower ones goes.
        "OLDER, 0.5, +1, FIVE_COMPLEMENT, 1.1, 0",
        "OLDER, 0.5, +4, FIVE_COMPLEMENT, 1.4, 0",
        // Five and five make ten: the five lower beads go, and one is carried.
        "OLDER, 0.5, +5, TEN_COMPLEMENT, 0.0, 1",
        "OLDER, 0.5, +9, TEN_COMPLEMENT, 0.4, 1",
        "OLDER, 0.5, +7, TEN_COMPLEMENT, 0.2, 1",
        // Six beads' worth is not there: borrow, and the four left over need the five.
        "OLDER, 0.5, -5, DIRECT, 0.0, 0",
        "OLDER, 0.5, -3, DIRECT, 0.2, 0",
        "OLDER, 0.5, -6, TEN_WITH_FIVE, 1.4, -1",
        // A ten on one rod: nothing is borrowed while the beads are there.
        "OLDER, 1.5, -1, DIRECT, 1.4, 0",
        "OLDER, 1.5, -5, DIRECT, 0.5, 0",
        "OLDER, 1.5, -9, DIRECT, 0.1, 0",
        "OLDER, 1.5, +1, TEN_COMPLEMENT, 0.1, 1",
        "OLDER, 1.5, +9, TEN_COMPLEMENT, 1.4, 1",
        "SUANPAN, 2.0, -1, FIVE_COMPLEMENT, 1.4, 0",
        "SUANPAN, 2.0, -5, DIRECT, 1.0, 0",
        "SUANPAN, 2.0, -7, FIVE_COMPLEMENT, 0.3, 0",
        "SUANPAN, 2.0, +3, TEN_WITH_FIVE, 0.3, 1",
        "SUANPAN, 2.0, +6, TEN_WITH_FIVE, 1.1, 1",
        "SUANPAN, 2.5, -7, DIRECT, 1.3, 0",
        "SUANPAN, 2.5, +9, TEN_COMPLEMENT, 2.4, 1",
        "SUANPAN, 2.5, +1, TEN_COMPLEMENT, 1.1, 1",
        "SUANPAN, 1.5, +5, TEN_COMPLEMENT, 0.5, 1",
    })
    void aFullRodIsWorkedWithTheBeadsThatAreThere(
            FrameKind kind, String before, int digit, Technique technique, String after, int ten) {
        Hand hand =
                new Hand(
                        Frame.clear(kind, 0, 1).with(0, rod(before)).with(1, rod("0.2")),
                        Habits.COMMON);

        work(hand, 0, digit);

        Step step = hand.steps().get(digit < 0 && ten != 0 ? 1 : 0);
        assertThat(step.technique()).isEqualTo(technique);
        assertThat(step.digit()).isEqualTo(digit);
        assertThat(hand.frame().rod(0)).isEqualTo(rod(after));
        assertThat(hand.frame().rod(1)).isEqualTo(new Rod(0, 2 + ten));
        assertThat(hand.trace().steps()).hasSize(ten == 0 ? 1 : 2);
    }

    @Test
    void twoUpperBeadsGoOneAfterTheOther() {
        Hand hand =
                new Hand(Frame.clear(FrameKind.SUANPAN, 0, 1).with(0, rod("2.0")), Habits.COMMON);

        hand.take(0, 7, ENTRY);

        Stroke.Upper up = new Stroke.Upper(0, Direction.AWAY_FROM_BEAM);
        Stroke.Lower three = new Stroke.Lower(0, 3, Direction.TOWARD_BEAM);
        assertThat(hand.steps().getFirst().motions())
                .containsExactly(new Motion(List.of(three, up)), new Motion(List.of(up)));
    }

    /// Every look of the rod, its neighbour full or empty, every digit, both orders.
    @ParameterizedTest
    @EnumSource(FrameKind.class)
    void everyRodIsWorkedToTheRightCount(FrameKind kind) {
        for (CarryOrder order : CarryOrder.values()) {
            for (Rod look : looks(kind)) {
                for (Rod next : looks(kind)) {
                    for (int digit = -9; digit <= 9; digit++) {
                        Frame start =
                                Frame.clear(kind, 0, 3)
                                        .with(0, look)
                                        .with(1, next)
                                        .with(3, rod("0.1"));
                        Hand hand = new Hand(start, Habits.COMMON.with(order));

                        work(hand, 0, digit);

                        BigDecimal expected = start.value().add(BigDecimal.valueOf(digit));
                        assertThat(hand.trace().end().value())
                                .as("%s %s %+d", next, look, digit)
                                .isEqualByComparingTo(expected);
                    }
                }
            }
        }
    }

    private static void work(Hand hand, int rod, int digit) {
        if (digit < 0) {
            hand.take(rod, -digit, ENTRY);
        } else {
            hand.add(rod, digit, ENTRY);
        }
    }

    private static List<Rod> looks(FrameKind kind) {
        List<Rod> looks = new ArrayList<>();
        for (int upper = 0; upper <= 3; upper++) {
            for (int lower = 0; lower <= 6; lower++) {
                Rod rod = new Rod(upper, lower);
                if (kind.holds(rod)) {
                    looks.add(rod);
                }
            }
        }
        return looks;
    }

    private static Rod rod(String written) {
        return new Rod(written.charAt(0) - '0', written.charAt(2) - '0');
    }
}
