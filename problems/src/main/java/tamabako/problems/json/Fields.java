package tamabako.problems.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Supplier;
import tamabako.problems.Numerals;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;

/// The fields of one JSON object, taken out by key. Whatever does not fit throws an [Unreadable]
/// that names the key.
final class Fields {

    /// The most characters of a text: a name, or an answer as written.
    static final int LONGEST_TEXT = 200;

    /// A double holds numbers of so many digits exactly.
    private static final int DOUBLE_DIGITS = 15;

    private final JsonNode object;

    private Fields(JsonNode object) {
        this.object = object;
    }

    static Fields of(JsonNode node) {
        if (!node.isObject()) {
            throw new Unreadable(new Reason.NotAnObject(shown(node)));
        }
        return new Fields(node);
    }

    /// Refuses any key that is not in `known`.
    void allow(List<String> known) {
        object.fieldNames()
                .forEachRemaining(key -> {
                    if (!known.contains(key)) {
                        throw new Unreadable(new Reason.UnknownKey(Unreadable.shown(key), known));
                    }
                });
    }

    /// The value of `key`, which must be there; `example` is shown where it is not.
    JsonNode get(String key, String example) {
        JsonNode value = object.get(key);
        if (value == null) {
            throw new Unreadable(new Reason.MissingKey(key, example));
        }
        return value;
    }

    /// What `read` makes of the value of `key`, where it is there.
    <T> Optional<T> find(String key, Function<JsonNode, T> read) {
        return Optional.ofNullable(object.get(key))
                .map(value -> inside(key, () -> read.apply(value)));
    }

    /// A whole number from `least` to `most`, where `key` is there.
    OptionalInt whole(String key, int least, int most) {
        Optional<Integer> found = find(key, value -> wholeOf(value, least, most));
        return found.isPresent() ? OptionalInt.of(found.get()) : OptionalInt.empty();
    }

    BigDecimal number(String key, String example) {
        JsonNode value = get(key, example);
        return inside(key, () -> numberOf(value));
    }

    List<BigDecimal> numbers(String key, String example) {
        JsonNode list = get(key, example);
        return inside(key, () -> listOf(list, example, Fields::numberOf));
    }

    static <T> List<T> listOf(JsonNode list, String example, Function<JsonNode, T> read) {
        if (!list.isArray()) {
            throw new Unreadable(new Reason.OtherValue(shown(list), example));
        }
        List<T> items = new ArrayList<>();
        for (JsonNode item : list) {
            items.add(inside(Integer.toString(items.size() + 1), () -> read.apply(item)));
        }
        return items;
    }

    /// A number: a string, or a JSON number that is exact.
    static BigDecimal numberOf(JsonNode value) {
        return numberOf(value, "\"54\"");
    }

    private static BigDecimal numberOf(JsonNode value, String example) {
        if (value.isTextual()) {
            return Numerals.parse(value.textValue());
        }
        if (!value.isNumber()) {
            throw new Unreadable(new Reason.OtherValue(shown(value), example));
        }
        boolean cut = value.isFloatingPointNumber() && !value.isBigDecimal();
        if (cut && !Double.isFinite(value.doubleValue())) {
            throw new Unreadable(new Reason.NotExact(shown(value)));
        }
        BigDecimal number = value.decimalValue();
        if (cut && number.precision() > DOUBLE_DIGITS) {
            throw new Unreadable(new Reason.NotExact(shown(value)));
        }
        return plain(number, shown(value));
    }

    /// A text as written: a string, or a JSON number as its digits; `example` is shown where it is
    /// neither.
    static String textOf(JsonNode value, String example) {
        return textOf(value, example, LONGEST_TEXT);
    }

    /// The same with a limit of its own.
    static String textOf(JsonNode value, String example, int longest) {
        if (value.isNumber()) {
            return numberOf(value).toPlainString();
        }
        if (!value.isTextual()) {
            throw new Unreadable(new Reason.OtherValue(shown(value), example));
        }
        String text = value.textValue();
        if (text.length() > longest) {
            throw new Unreadable(new Reason.TextTooLong(text.length(), longest));
        }
        return text;
    }

    static int wholeOf(JsonNode value, int least, int most) {
        BigDecimal number = numberOf(value, Integer.toString(least));
        boolean fits =
                number.stripTrailingZeros().scale() <= 0
                        && number.compareTo(BigDecimal.valueOf(least)) >= 0
                        && number.compareTo(BigDecimal.valueOf(most)) <= 0;
        if (!fits) {
            throw new Unreadable(new Reason.OutOfRange(shown(value), least, most));
        }
        return number.intValue();
    }

    /// A value as messages show it: objects and lists only by their brackets.
    static String shown(JsonNode value) {
        return switch (value.getNodeType()) {
            case OBJECT -> "{…}";
            case ARRAY -> "[…]";
            case STRING -> Unreadable.shown("\"" + value.textValue() + "\"");
            default -> Unreadable.shown(value.asText());
        };
    }

    static <T> T inside(String key, Supplier<T> read) {
        try {
            return read.get();
        } catch (Unreadable fault) {
            throw fault.inside(key);
        }
    }

    private static BigDecimal plain(BigDecimal number, String shown) {
        BigDecimal written = number;
        if (Math.abs((long) number.scale()) > Numerals.MOST_DIGITS
                || number.precision() - (long) number.scale() > Numerals.MOST_DIGITS) {
            throw new Unreadable(new Reason.NumberTooLong(shown, Numerals.MOST_DIGITS));
        }
        if (number.scale() < 0) {
            written = number.setScale(0);
        }
        return written;
    }
}
