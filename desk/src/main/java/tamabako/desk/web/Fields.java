package tamabako.desk.web;

import java.net.URLEncoder;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// The fields of a form or of a query, in the order in which they came. A field may come more than
/// once.
public final class Fields {

    /// No fields at all.
    public static final Fields NONE = new Fields(Map.of());

    /// The most fields that are read; a form with more is refused.
    public static final int MOST = 2_000;

    private final Map<String, List<String>> values;

    private Fields(Map<String, List<String>> values) {
        this.values = values;
    }

    /// What came of reading a form.
    public sealed interface Read {
        /// The fields.
        record Good(Fields fields) implements Read {}

        /// The bytes are no UTF-8, or a per cent sign is not followed by two figures.
        record Garbled() implements Read {}

        /// More than [#MOST] fields.
        record TooMany() implements Read {}
    }

    /// Reads `a=1&b=2` with UTF-8 in per cent figures, as browsers send forms.
    public static Read parse(String encoded) {
        Map<String, List<String>> read = new LinkedHashMap<>();
        int count = 0;
        for (String pair : encoded.split("&", MOST + 2)) {
            if (pair.isEmpty()) {
                continue;
            }
            if (++count > MOST) {
                return new Read.TooMany();
            }
            int equals = pair.indexOf('=');
            Optional<String> name = decode(equals < 0 ? pair : pair.substring(0, equals));
            Optional<String> value = decode(equals < 0 ? "" : pair.substring(equals + 1));
            if (name.isEmpty() || value.isEmpty()) {
                return new Read.Garbled();
            }
            read.computeIfAbsent(name.get(), _ -> new ArrayList<>()).add(value.get());
        }
        return new Read.Good(new Fields(read));
    }

    /// Fields made by hand, each with one value.
    public static Fields of(Map<String, String> single) {
        Map<String, List<String>> made = new LinkedHashMap<>();
        single.forEach((name, value) -> made.put(name, List.of(value)));
        return new Fields(made);
    }

    /// The first value of a field, without blanks around it; empty where it did not come.
    public String text(String name) {
        return find(name).orElse("").strip();
    }

    /// The first value of a field exactly as it came, if it came.
    public Optional<String> find(String name) {
        return Optional.ofNullable(values.get(name)).map(List::getFirst);
    }

    /// Every value of a field.
    public List<String> all(String name) {
        return List.copyOf(values.getOrDefault(name, List.of()));
    }

    /// Whether a field came at all, such as a ticked box or a pressed button.
    public boolean has(String name) {
        return values.containsKey(name);
    }

    /// The names of the fields that came.
    public Set<String> names() {
        return Set.copyOf(values.keySet());
    }

    /// Whether no field came.
    public boolean isEmpty() {
        return values.isEmpty();
    }

    /// The fields of these names as they stand in an address, in the order in which they came;
    /// those without a value are left out.
    public String encode(Set<String> names) {
        List<String> pairs = new ArrayList<>();
        values.forEach((name, all) -> {
            for (String value : names.contains(name) ? all : List.<String>of()) {
                if (!value.isBlank()) {
                    pairs.add(name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8));
                }
            }
        });
        return String.join("&", pairs);
    }

    private static Optional<String> decode(String part) {
        byte[] bytes = new byte[part.length() * 3];
        int length = 0;
        for (int i = 0; i < part.length(); i++) {
            char figure = part.charAt(i);
            if (figure > 0x7E || figure < 0x20) {
                return Optional.empty();
            }
            if (figure == '%') {
                int value = i + 2 < part.length() ? twoFigures(part, i + 1) : -1;
                if (value < 0) {
                    return Optional.empty();
                }
                bytes[length++] = (byte) value;
                i += 2;
            } else {
                bytes[length++] = (byte) (figure == '+' ? ' ' : figure);
            }
        }
        return text(bytes, length);
    }

    private static int twoFigures(String part, int at) {
        int high = Character.digit(part.charAt(at), 16);
        int low = Character.digit(part.charAt(at + 1), 16);
        return high < 0 || low < 0 ? -1 : high * 16 + low;
    }

    private static Optional<String> text(byte[] bytes, int length) {
        try {
            var decoder = StandardCharsets.UTF_8.newDecoder();
            return Optional.of(decoder.decode(ByteBuffer.wrap(bytes, 0, length)).toString());
        } catch (CharacterCodingException notUtf8) {
            return Optional.empty();
        }
    }
}
