package tamabako.desk.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import tamabako.frame.Direction;
import tamabako.frame.Frame;
import tamabako.frame.FrameKind;
import tamabako.frame.Played;
import tamabako.frame.Rod;
import tamabako.frame.Stroke;

/// The program's side of the cases that the page script reads too.
class BeadVectorsTest {

    @Test
    void everyStrokeOnEveryRodDoesWhatTheBeadsAllow() {
        List<List<String>> cases = Vectors.read("strokes.txt");

        assertThat(cases).hasSize(480);
        for (List<String> given : cases) {
            Frame frame = frame(given.get(0), given.get(1));
            Stroke stroke = stroke(given.get(2), given.get(3), given.get(4));
            String outcome =
                    switch (frame.play(stroke)) {
                        case Played.Moved(Frame moved) -> text(moved.rod(0));
                        case Played.Refused(_, Played.Because because) ->
                                because.name().toLowerCase(Locale.ROOT).replace('_', '-');
                    };
            assertThat(outcome).as(given.toString()).isEqualTo(given.get(5));
        }
    }

    @Test
    void everyTapIsAStrokeThatTheFrameTakes() {
        List<List<String>> cases = Vectors.read("taps.txt");

        assertThat(cases).hasSize(248);
        for (List<String> given : cases) {
            Frame frame = frame(given.get(0), given.get(1));
            int beads = Integer.parseInt(given.get(5));
            boolean upper = given.get(2).equals("upper");
            for (int i = 0; i < (upper ? beads : 1); i++) {
                Stroke stroke = stroke(given.get(2), given.get(5), given.get(4));
                assertThat(frame.play(stroke)).isInstanceOf(Played.Moved.class);
                if (frame.play(stroke) instanceof Played.Moved(Frame moved)) {
                    frame = moved;
                }
            }
            assertThat(text(frame.rod(0))).as(given.toString()).isEqualTo(given.get(6));
        }
    }

    private static Frame frame(String kind, String rod) {
        FrameKind frame = FrameKind.valueOf(kind.toUpperCase(Locale.ROOT));
        return Frame.clear(frame, 0, 0).with(0, new Rod(rod.charAt(0) - '0', rod.charAt(2) - '0'));
    }

    private static Stroke stroke(String bead, String beads, String direction) {
        Direction way =
                direction.equals("toward-beam") ? Direction.TOWARD_BEAM : Direction.AWAY_FROM_BEAM;
        return bead.equals("upper")
                ? new Stroke.Upper(0, way)
                : new Stroke.Lower(0, Integer.parseInt(beads), way);
    }

    private static String text(Rod rod) {
        return rod.upper() + "." + rod.lower();
    }
}
