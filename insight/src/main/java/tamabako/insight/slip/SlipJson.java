package tamabako.insight.slip;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import tamabako.frame.words.Languages;

/// Writes a finding as JSON, the plain format of `slips`:
/// `{"right":false,"expected":"63","explained":0.97,"slips":[{"slip":"carry-left-out","share":0.61,
/// "row":2,"rod":1,"say":{"en":"...","ja":"..."}}],"cannotTell":["..."]}`.
///
/// Where two slips at once may stand behind the answer, `"two":{"share":0.3,"slips":["...","..."]}`
/// follows, and `three` of the same shape where it takes three. Shares are rounded to four places.
/// `row` and `rod` are left out where a slip has none; a rod is a power of ten.
public final class SlipJson {

    private static final int SHARE_PLACES = 4;

    /// Two or three slips at once that are less likely than this are not told.
    private static final double WORTH_TELLING = 0.01;

    private static final List<SlipWords> WORDS =
            Languages.all().stream().map(SlipWords::of).toList();

    private SlipJson() {}

    /// The finding as one object.
    public static ObjectNode of(Finding finding) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("right", finding.right());
        node.put("expected", finding.expected());
        node.put("explained", share(finding.explained()));
        ArrayNode slips = node.putArray("slips");
        finding.slips().forEach(slip -> slips.add(of(slip)));
        ArrayNode kinds = node.putArray("cannotTell");
        finding.cannotTell().forEach(kind -> kinds.add(kind.word()));
        finding.two()
                .filter(two -> two.share() >= WORTH_TELLING)
                .ifPresent(two -> node.set("two", of(two)));
        finding.three()
                .filter(three -> three.share() >= WORTH_TELLING)
                .ifPresent(three -> node.set("three", of(three)));
        return node;
    }

    private static ObjectNode of(Finding.Together together) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("share", share(together.share()));
        ArrayNode slips = node.putArray("slips");
        together.kinds().forEach(kind -> slips.add(kind.word()));
        return node;
    }

    private static ObjectNode of(Slip slip) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("slip", slip.kind().word());
        node.put("share", share(slip.share()));
        slip.row().ifPresent(row -> node.put("row", row));
        slip.rod().ifPresent(rod -> node.put("rod", rod));
        ObjectNode say = node.putObject("say");
        for (SlipWords words : WORDS) {
            say.put(words.language().toLanguageTag(), words.say(slip));
        }
        return node;
    }

    private static BigDecimal share(double share) {
        return BigDecimal.valueOf(share).setScale(SHARE_PLACES, RoundingMode.HALF_UP);
    }
}
