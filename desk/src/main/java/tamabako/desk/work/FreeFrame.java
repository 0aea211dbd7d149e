package tamabako.desk.work;

import java.util.List;
import java.util.Map;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.View;

/// The free frame that an address asks for; what it does not say, or says wrongly, is the usual
/// frame.
///
/// @param kind the word of the frame kind
/// @param rods 5 to 27
/// @param decimals rods right of the unit rod: 0, 3 or 6
public record FreeFrame(String kind, int rods, int decimals) {

    /// The fewest and the most rods of a free frame.
    public static final int FEWEST_RODS = 5;

    public static final int MOST_RODS = 27;

    /// Where the unit rod may be.
    public static final List<Integer> DECIMALS = List.of(0, 3, 6);

    private static final int USUAL_RODS = 13;

    static Reply answer(Request request) {
        return Reply.page("frame.jte", Map.of("frame", of(request.query())));
    }

    static FreeFrame of(Fields query) {
        String kind = query.text("kind");
        int decimals = number(query.text("decimals"), 0);
        return new FreeFrame(
                WorkPage.kinds().contains(kind) ? kind : WorkPage.kinds().getFirst(),
                Math.clamp(number(query.text("rods"), USUAL_RODS), FEWEST_RODS, MOST_RODS),
                DECIMALS.contains(decimals) ? decimals : 0);
    }

    /// What the page script says, as JSON.
    public String names(View view) {
        return FrameNames.json(view);
    }

    private static int number(String written, int otherwise) {
        return written.matches("\\d{1,2}") ? Integer.parseInt(written) : otherwise;
    }
}
