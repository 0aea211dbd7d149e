package tamabako.desk.work;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.RecordComponent;
import java.util.Locale;
import tamabako.frame.Cause;

/// What asked for a step, as JSON: the word of its kind, then its numbers by name, such as
/// `{"kind":"row","row":2,"place":1}`. A carry or a borrow tells what it `serves`.
final class CauseJson {

    private CauseJson() {}

    static ObjectNode of(Cause cause) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("kind", cause.word());
        for (RecordComponent component : cause.getClass().getRecordComponents()) {
            put(json, component.getName(), value(component, cause));
        }
        return json;
    }

    private static void put(ObjectNode json, String name, Object value) {
        switch (value) {
            case Integer number -> json.put(name, number);
            case Cause served -> json.set(name, of(served));
            default -> json.put(name, value.toString().toLowerCase(Locale.ROOT).replace('_', '-'));
        }
    }

    private static Object value(RecordComponent component, Cause cause) {
        try {
            return component.getAccessor().invoke(cause);
        } catch (ReflectiveOperationException failed) {
            throw new IllegalStateException("%s cannot be told.".formatted(cause), failed);
        }
    }
}
