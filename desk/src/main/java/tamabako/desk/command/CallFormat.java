package tamabako.desk.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import tamabako.voice.script.CallLine;
import tamabako.voice.script.CallScript;

/// A call script as the command `call` writes it.
final class CallFormat {

    private CallFormat() {}

    /// The call for a person: a line with the name, then each line of the caller with what is said
    /// after a tab, then the answer; a blank line at the end.
    static String text(CallScript script) {
        StringBuilder text = new StringBuilder();
        text.append("# ").append(script.id()).append('\n');
        line(text, script.opening());
        script.rows().forEach(row -> line(text, row));
        text.append("= ");
        line(text, script.answer());
        return text.append('\n').toString();
    }

    private static void line(StringBuilder text, CallLine line) {
        text.append(line.shown());
        if (!line.words().isEmpty()) {
            text.append('\t').append(line.said());
        }
        text.append('\n');
    }

    /// The call as one line of JSON.
    static String json(CallScript script) {
        ObjectNode call = JsonNodeFactory.instance.objectNode();
        call.put("id", script.id());
        call.put("language", script.language().toLanguageTag());
        call.set("opening", json(script.opening()));
        ArrayNode rows = call.putArray("rows");
        script.rows().forEach(row -> rows.add(json(row)));
        call.set("answer", json(script.answer()));
        call.set("right", json(script.right()));
        return call + "\n";
    }

    private static ObjectNode json(CallLine line) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("shown", line.shown());
        json.put("said", line.said());
        return json;
    }
}
