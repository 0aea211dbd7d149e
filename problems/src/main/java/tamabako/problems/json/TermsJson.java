package tamabako.problems.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import tamabako.frame.Rounding;
import tamabako.problems.Mode;
import tamabako.problems.Terms;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;

/// The terms of a problem among its fields.
final class TermsJson {

    static final List<String> KEYS =
            List.of("unit", "places", "rounding", "points", "mode", "pad", "story", "earlier");

    private static final int MOST_POINTS = 1000;

    private TermsJson() {}

    static Terms read(Fields fields) {
        return new Terms(
                fields.find("unit", TermsJson::unit),
                fields.whole("places", 0, Terms.MOST_PLACES),
                fields.find("rounding", node -> oneOf(node, Rounding.values(), TermsJson::word)),
                fields.whole("points", 0, MOST_POINTS),
                fields.find("mode", node -> oneOf(node, Mode.values(), Mode::word))
                        .orElse(Mode.FRAME),
                ToldJson.read(fields));
    }

    static void write(Terms terms, ObjectNode node) {
        terms.unit().ifPresent(unit -> node.put("unit", unit));
        terms.places().ifPresent(places -> node.put("places", places));
        terms.rounding().ifPresent(rounding -> node.put("rounding", word(rounding)));
        terms.points().ifPresent(points -> node.put("points", points));
        if (terms.mode() != Mode.FRAME) {
            node.put("mode", terms.mode().word());
        }
        terms.told().ifPresent(told -> ToldJson.write(told, node));
    }

    private static String unit(JsonNode node) {
        try {
            return Currency.getInstance(node.asText()).getCurrencyCode();
        } catch (IllegalArgumentException _) {
            throw new Unreadable(new Reason.UnknownUnit(Fields.shown(node)));
        }
    }

    private static <T> T oneOf(JsonNode node, T[] choices, Function<T, String> word) {
        for (T choice : choices) {
            if (word.apply(choice).equals(node.textValue())) {
                return choice;
            }
        }
        List<String> known = Arrays.stream(choices).map(word).toList();
        throw new Unreadable(new Reason.UnknownWord(Fields.shown(node), known));
    }

    private static String word(Rounding rounding) {
        return rounding.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
