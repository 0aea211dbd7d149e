package tamabako.desk.call;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import tamabako.desk.sheet.Form;

/// The caller's page.
///
/// @param form what was asked for
/// @param json the calls for the page script
/// @param plan the address of the plan with the same fields
/// @param fields the fields themselves, as in an address
public record StageView(Form form, String json, String plan, String fields) {

    /// The address that opens a room for these calls.
    public String room() {
        return "/rooms?source=" + URLEncoder.encode("call:" + fields, StandardCharsets.UTF_8);
    }

    /// Whether pupils drop out.
    public boolean isRound() {
        return !form.isAt("round", "none");
    }
}
