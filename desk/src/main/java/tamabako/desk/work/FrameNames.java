package tamabako.desk.work;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import tamabako.desk.web.View;
import tamabako.frame.FrameKind;
import tamabako.frame.Rod;
import tamabako.frame.words.StepWords;

/// What the free frame says to a screen reader: the name of every place, what each rod looks like,
/// what the whole frame is. The page script has no words of its own; it takes them from here.
final class FrameNames {

    private static final int LOWEST_PLACE = -6;
    private static final int HIGHEST_PLACE = 26;

    private FrameNames() {}

    static String json(View view) {
        StepWords words = StepWords.of(view.words().language());
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        ObjectNode groups = json.putObject("groups");
        for (FrameKind kind : FrameKind.values()) {
            String word = kind.name().toLowerCase(Locale.ROOT);
            groups.put(word, view.say("frame.group." + word));
        }
        json.put("reads", view.say("frame.reads"));
        ObjectNode places = json.putObject("places");
        for (int place = HIGHEST_PLACE; place >= LOWEST_PLACE; place--) {
            places.put(String.valueOf(place), words.place(place));
        }
        ObjectNode rods = json.putObject("rods");
        for (int upper = 0; upper <= FrameKind.SUANPAN.upperBeads(); upper++) {
            for (int lower = 0; lower <= FrameKind.SUANPAN.lowerBeads(); lower++) {
                rods.put(upper + "." + lower, words.read(new Rod(upper, lower)));
            }
        }
        return InPage.json(json);
    }
}
