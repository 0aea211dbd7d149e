package tamabako.insight.slip;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/// Writes a finding as JSON.
public final class SlipJson {

    private SlipJson() {}

    /// The finding in the plain format of `slips`.
    public static ObjectNode of(Finding finding) {
        return JsonNodeFactory.instance.objectNode().put("right", finding.right());
    }
}
