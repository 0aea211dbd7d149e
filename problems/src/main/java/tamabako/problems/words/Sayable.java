package tamabako.problems.words;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/// Something that can be said to people: a public record, or a constant of an enum, whose name
/// picks the template; the components of a record fill it.
public interface Sayable {

    /// The first part of the template's name, shared by reasons of one sort, such as `unreadable`.
    String topic();

    /// The name of the template, such as `unreadable.unknown-key`.
    default String template() {
        return topic()
                + "."
                + (this instanceof Enum<?> constant ? word(constant) : word(getClass()));
    }

    /// What fills the template: the components of a record by name; nothing for a constant.
    default Map<String, Object> blanks() {
        Map<String, Object> values = new LinkedHashMap<>();
        if (!getClass().isRecord()) {
            return values;
        }
        for (RecordComponent component : getClass().getRecordComponents()) {
            try {
                values.put(component.getName(), component.getAccessor().invoke(this));
            } catch (IllegalAccessException | InvocationTargetException failed) {
                throw new IllegalStateException(
                        "%s must be a public record to be said.".formatted(getClass()), failed);
            }
        }
        return values;
    }

    /// The name of a record as a template has it: `UnknownKey` is `unknown-key`.
    static String word(Class<?> record) {
        return record.getSimpleName().replaceAll("(?<!^)(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }

    /// The name of a constant as a template has it: `LEAST_DIGITS` is `least-digits`.
    static String word(Enum<?> constant) {
        return constant.name().replace('_', '-').toLowerCase(Locale.ROOT);
    }
}
