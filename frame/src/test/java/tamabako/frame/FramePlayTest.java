package tamabako.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tamabako.frame.Played.Because;

/// Beads move only where they can: every stroke on every rod that each frame kind can show.
class FramePlayTest {

    /// The counts follow from the beads: an upper block of n beads has n strokes at each of its n +
    /// 1 heights' borders, a lower block of m beads always has m lengths to push.
    @ParameterizedTest
    @CsvSource({"MODERN, 10, 50, 70", "OLDER, 12, 72, 72", "SUANPAN, 18, 114, 102"})
    void soManyStrokesMoveAndTheOthersAreRefused(
            FrameKind kind, int states, int moved, int refused) {
        List<Played> played = new ArrayList<>();
        for (Rod rod : rods(kind)) {
            strokes(1).forEach(stroke -> played.add(frame(kind, rod).play(stroke)));
        }

        assertThat(rods(kind)).hasSize(states);
        assertThat(played).filteredOn(Played.Moved.class::isInstance).hasSize(moved);
        assertThat(played).filteredOn(Played.Refused.class::isInstance).hasSize(refused);
    }

    @ParameterizedTest
    @EnumSource(FrameKind.class)
    void aStrokeMovesItsBeadsOrSaysWhyNot(FrameKind kind) {
        for (Rod rod : rods(kind)) {
            Frame frame = frame(kind, rod);
            strokes(1)
                    .forEach(stroke -> {
                        switch (frame.play(stroke)) {
                            case Played.Moved(Frame after) -> assertMoved(frame, stroke, after);
                            case Played.Refused(Stroke tried, Because because) -> {
                                assertThat(tried).isEqualTo(stroke);
                                assertThat(because).isEqualTo(lack(kind, rod, stroke));
                            }
                        }
                    });
        }
    }

    @ParameterizedTest
    @CsvSource({"3", "-1", "1000000"})
    void aRodThatIsNotThereIsRefused(int missing) {
        Frame frame = frame(FrameKind.SUANPAN, new Rod(1, 2));

        strokes(missing)
                .forEach(stroke ->
                        assertThat(frame.play(stroke))
                                .isEqualTo(new Played.Refused(stroke, Because.NO_SUCH_ROD)));
    }

    /// The stroke changed its own rod alone, the right bead of it, and the stroke back undoes it.
    private static void assertMoved(Frame before, Stroke stroke, Frame after) {
        assertThat(after.value())
                .isEqualByComparingTo(
                        before.value().add(java.math.BigDecimal.valueOf(10L * stroke.change())));
        assertThat(after.rod(0)).isEqualTo(before.rod(0));
        assertThat(after.rod(2)).isEqualTo(before.rod(2));
        boolean onUpper = stroke instanceof Stroke.Upper;
        assertThat(after.rod(1).upper() != before.rod(1).upper()).isEqualTo(onUpper);
        assertThat(after.rod(1).lower() != before.rod(1).lower()).isEqualTo(!onUpper);
        assertThat(after.play(back(stroke))).isEqualTo(new Played.Moved(before));
    }

    private static Because lack(FrameKind kind, Rod rod, Stroke stroke) {
        boolean onUpper = stroke instanceof Stroke.Upper;
        int wanted = onUpper ? 1 : Math.abs(stroke.change());
        int atBeam = onUpper ? rod.upper() : rod.lower();
        int away = (onUpper ? kind.upperBeads() : kind.lowerBeads()) - atBeam;
        boolean toward = stroke.direction() == Direction.TOWARD_BEAM;
        assertThat(wanted).isGreaterThan(toward ? away : atBeam);
        return toward ? Because.NO_BEAD_LEFT_TO_BRING : Because.NO_BEAD_AT_THE_BEAM;
    }

    private static Frame frame(FrameKind kind, Rod middle) {
        return Frame.clear(kind, 0, 2)
                .with(0, new Rod(1, 1))
                .with(1, middle)
                .with(2, new Rod(0, 3));
    }

    private static List<Rod> rods(FrameKind kind) {
        List<Rod> rods = new ArrayList<>();
        for (int upper = 0; upper <= kind.upperBeads(); upper++) {
            for (int lower = 0; lower <= kind.lowerBeads(); lower++) {
                rods.add(new Rod(upper, lower));
            }
        }
        return rods;
    }

    private static Stream<Stroke> strokes(int rod) {
        return Stream.of(Direction.values())
                .flatMap(direction ->
                        Stream.concat(
                                Stream.of(new Stroke.Upper(rod, direction)),
                                Stream.of(1, 2, 3, 4, 5)
                                        .map(beads -> new Stroke.Lower(rod, beads, direction))));
    }

    private static Stroke back(Stroke stroke) {
        Direction turned =
                stroke.direction() == Direction.TOWARD_BEAM
                        ? Direction.AWAY_FROM_BEAM
                        : Direction.TOWARD_BEAM;
        return switch (stroke) {
            case Stroke.Upper(int rod, _) -> new Stroke.Upper(rod, turned);
            case Stroke.Lower(int rod, int beads, _) -> new Stroke.Lower(rod, beads, turned);
        };
    }
}
