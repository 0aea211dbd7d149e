package tamabako.desk.work;

import com.fasterxml.jackson.databind.JsonNode;

/// JSON that stands inside a page.
final class InPage {

    private InPage() {}

    /// `json` as the text of a script element: no letter of it can end the element.
    static String json(JsonNode json) {
        return json.toString().replace("<", "\\u003c");
    }
}
