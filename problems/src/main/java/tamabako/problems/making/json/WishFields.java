package tamabako.problems.making.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tamabako.frame.Technique;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;

/// The fields of a wish, taken out by key. Whatever does not fit throws an [Unreadable] that names
/// the key. Whether the numbers can be granted is for the maker to say.
final class WishFields {

    private static final Pattern SPAN = Pattern.compile("(\\d{1,6})(?:\\s*-\\s*(\\d{1,6}))?");
    private static final int MOST = 999_999;

    private final JsonNode object;

    WishFields(JsonNode node) {
        if (!node.isObject()) {
            throw new Unreadable(new Reason.NotAnObject(Unreadable.shown(node.toString())));
        }
        this.object = node;
    }

    /// Two bounds.
    record Bounds(int least, int most) {}

    /// Refuses any key that is not in `known`.
    void allow(List<String> known) {
        object.fieldNames()
                .forEachRemaining(key -> {
                    if (!known.contains(key)) {
                        throw new Unreadable(new Reason.UnknownKey(Unreadable.shown(key), known));
                    }
                });
    }

    boolean has(String key) {
        return object.has(key);
    }

    /// One of `known`, the first where the key is not there.
    String word(String key, List<String> known) {
        JsonNode node = object.get(key);
        if (node == null) {
            return known.getFirst();
        }
        if (!known.contains(node.asText())) {
            throw new Unreadable(key, new Reason.UnknownWord(shown(node), known));
        }
        return node.asText();
    }

    int whole(String key, int usual) {
        return wholeIfAny(key).orElse(usual);
    }

    OptionalInt wholeIfAny(String key) {
        Optional<Bounds> bounds = bounds(key);
        if (bounds.isPresent() && bounds.get().least() != bounds.get().most()) {
            throw new Unreadable(key, new Reason.OutOfRange(shown(object.get(key)), 0, MOST));
        }
        return bounds.isPresent() ? OptionalInt.of(bounds.get().least()) : OptionalInt.empty();
    }

    Bounds bounds(String key, int usual) {
        return bounds(key).orElseGet(() -> new Bounds(usual, usual));
    }

    /// A number `3`, or a range `"3-6"`.
    Optional<Bounds> bounds(String key) {
        JsonNode node = object.get(key);
        if (node == null) {
            return Optional.empty();
        }
        Matcher span = SPAN.matcher(node.asText().strip());
        if (!span.matches()) {
            throw new Unreadable(
                    key, new Reason.OtherValue(shown(node), "\"%s\":\"3-6\"".formatted(key)));
        }
        int least = Integer.parseInt(span.group(1));
        return Optional.of(
                new Bounds(least, span.group(2) == null ? least : Integer.parseInt(span.group(2))));
    }

    boolean isTrue(String key) {
        JsonNode node = object.get(key);
        if (node != null && !node.isBoolean()) {
            throw new Unreadable(
                    key, new Reason.OtherValue(shown(node), "\"%s\":true".formatted(key)));
        }
        return node != null && node.booleanValue();
    }

    /// A list of techniques, `usual` where the key is not there.
    Set<Technique> techniques(String key, Set<Technique> usual) {
        JsonNode node = object.get(key);
        if (node == null) {
            return usual;
        }
        Set<Technique> named = EnumSet.noneOf(Technique.class);
        if (!node.isArray()) {
            throw new Unreadable(
                    key, new Reason.OtherValue(shown(node), "\"%s\":[\"direct\"]".formatted(key)));
        }
        for (JsonNode one : node) {
            named.add(technique(key, one));
        }
        return named;
    }

    private static Technique technique(String key, JsonNode word) {
        for (Technique technique : Technique.values()) {
            if (technique.word().equals(word.asText())) {
                return technique;
            }
        }
        List<String> known = Arrays.stream(Technique.values()).map(Technique::word).toList();
        throw new Unreadable(key, new Reason.UnknownWord(shown(word), known));
    }

    private static String shown(JsonNode node) {
        return Unreadable.shown(node.toString());
    }
}
