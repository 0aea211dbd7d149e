package tamabako.desk.command;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;

/// The line of output that stands for a wrong line of input: `{"fault":"line 3: ..."}`.
final class FaultLine {

    private FaultLine() {}

    static String of(String message) {
        return JsonNodeFactory.instance.objectNode().put("fault", message).toString();
    }
}
