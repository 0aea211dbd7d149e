package tamabako.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/// Which beads the hand moves, which go together, and with which finger, in all 180 cases.
///
/// Source of the complements: K. Tochio, Computation on the Soroban (1912); Heffelfinger and Flom,
/// Abacus: Mystery of the Bead. Source of the fingers: Kojima, The Japanese Abacus (1954). Which
/// strokes go together: common practice after Kojima.
class HandMotionsTest {

    /// `3+` three lower beads up, `3-` down, `5+` the upper bead down, `5-` up; `&` joins the
    /// strokes of one motion. A digit that passes ten moves its complement; the ten is on the next
    /// rod.
    private static final String MOTIONS =
            """
            +1 D 1+     +1 F 5+&4-   +1 T 4- 5-
            +2 D 2+     +2 F 5+&3-   +2 T 3- 5-
            +3 D 3+     +3 F 5+&2-   +3 T 2- 5-
            +4 D 4+     +4 F 5+&1-   +4 T 1- 5-
            +5 D 5+                  +5 T 5-
            +6 D 1+&5+               +6 T 4-      +6 M 1+&5-
            +7 D 2+&5+               +7 T 3-      +7 M 2+&5-
            +8 D 3+&5+               +8 T 2-      +8 M 3+&5-
            +9 D 4+&5+               +9 T 1-      +9 M 4+&5-
            -1 D 1-     -1 F 4+&5-   -1 T 4+&5+
            -2 D 2-     -2 F 3+&5-   -2 T 3+&5+
            -3 D 3-     -3 F 2+&5-   -3 T 2+&5+
            -4 D 4-     -4 F 1+&5-   -4 T 1+&5+
            -5 D 5-                  -5 T 5+
            -6 D 1- 5-               -6 T 4+      -6 M 5+&1-
            -7 D 2- 5-               -7 T 3+      -7 M 5+&2-
            -8 D 3- 5-               -8 T 2+      -8 M 5+&3-
            -9 D 4- 5-               -9 T 1+      -9 M 5+&4-
            """;

    private static final Map<String, String> TABLE = table();

    static Stream<Arguments> cases() {
        return IntStream.rangeClosed(0, 9)
                .boxed()
                .flatMap(held ->
                        IntStream.rangeClosed(-9, 9)
                                .filter(digit -> digit != 0)
                                .mapToObj(digit -> Arguments.of(held, digit)));
    }

    @Test
    void theTableHas52Lines() {
        assertThat(TABLE).hasSize(52);
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("cases")
    void everyCaseMovesTheBeadsOfTheTable(int held, int digit) {
        Step step = work(FrameKind.MODERN, held, digit);

        String key = "%+d %s".formatted(digit, letter(step.technique()));
        assertThat(written(step)).isEqualTo(TABLE.get(key));
        assertThat(step.after().value())
                .isEqualTo(Math.floorMod(step.before().value() + digit, 10));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("cases")
    void framesWithMoreBeadsAreWorkedTheSameWay(int held, int digit) {
        Step modern = work(FrameKind.MODERN, held, digit);

        assertThat(work(FrameKind.OLDER, held, digit)).isEqualTo(modern);
        assertThat(work(FrameKind.SUANPAN, held, digit)).isEqualTo(modern);
    }

    @ParameterizedTest
    @CsvSource({
        "TWO_FINGERS, 3+, THUMB",
        "TWO_FINGERS, 3-, FOREFINGER",
        "TWO_FINGERS, 5+, FOREFINGER",
        "TWO_FINGERS, 5-, FOREFINGER",
        "THUMB_ON_UPPER, 3+, FOREFINGER",
        "THUMB_ON_UPPER, 3-, FOREFINGER",
        "THUMB_ON_UPPER, 5+, THUMB",
        "THUMB_ON_UPPER, 5-, THUMB",
        "ONE_FINGER, 3+, FOREFINGER",
        "ONE_FINGER, 3-, FOREFINGER",
        "ONE_FINGER, 5+, FOREFINGER",
        "ONE_FINGER, 5-, FOREFINGER",
        "THREE_FINGERS, 3+, THUMB",
        "THREE_FINGERS, 3-, FOREFINGER",
        "THREE_FINGERS, 5+, MIDDLE_FINGER",
        "THREE_FINGERS, 5-, MIDDLE_FINGER",
    })
    void eachFingeringGivesEachBeadItsFinger(Fingering fingering, String stroke, Finger finger) {
        List<Stroke> like =
                cases().map(Arguments::get)
                        .map(pair -> work(FrameKind.MODERN, (int) pair[0], (int) pair[1]))
                        .flatMap(step -> step.strokes().stream())
                        .filter(made -> isLike(stroke, made))
                        .toList();

        assertThat(like).isNotEmpty();
        assertThat(like).allMatch(made -> fingering.finger(made) == finger);
    }

    /// The step on the unit rod when `digit` is added to `held`, or taken from it.
    private static Step work(FrameKind kind, int held, int digit) {
        Frame frame = Frame.clear(kind, 0, 2).with(0, Rod.showing(held)).with(1, Rod.showing(5));
        Hand hand = new Hand(frame, Habits.COMMON);
        Cause cause = new Cause.Row(2, 0);
        if (digit > 0) {
            hand.add(0, digit, cause);
        } else {
            hand.take(0, -digit, cause);
        }
        return hand.trace().steps().stream()
                .filter(step -> step.cause().equals(cause))
                .findFirst()
                .orElseThrow();
    }

    private static char letter(Technique technique) {
        return switch (technique) {
            case DIRECT -> 'D';
            case FIVE_COMPLEMENT -> 'F';
            case TEN_COMPLEMENT -> 'T';
            case TEN_WITH_FIVE -> 'M';
        };
    }

    private static String written(Step step) {
        return step.motions().stream()
                .map(motion ->
                        motion.strokes().stream()
                                .map(HandMotionsTest::written)
                                .collect(Collectors.joining("&")))
                .collect(Collectors.joining(" "));
    }

    private static String written(Stroke stroke) {
        return switch (stroke) {
            case Stroke.Upper(_, Direction direction) ->
                    direction == Direction.TOWARD_BEAM ? "5+" : "5-";
            case Stroke.Lower(_, int beads, Direction direction) ->
                    beads + (direction == Direction.TOWARD_BEAM ? "+" : "-");
        };
    }

    private static boolean isLike(String written, Stroke stroke) {
        boolean upper = written.startsWith("5");
        return upper == stroke instanceof Stroke.Upper
                && written.endsWith("+") == (stroke.direction() == Direction.TOWARD_BEAM);
    }

    private static Map<String, String> table() {
        Map<String, String> table = new HashMap<>();
        for (String cell : MOTIONS.split("\\s{2,}|\n", -1)) {
            if (!cell.isBlank()) {
                table.put(cell.substring(0, 4), cell.substring(5));
            }
        }
        return table;
    }
}
