package tamabako.desk.call;

import tamabako.desk.sheet.Form;

/// The caller's page.
///
/// @param form what was asked for
/// @param json the calls for the page script
/// @param plan the address of the plan with the same fields
public record StageView(Form form, String json, String plan) {

    /// Whether pupils drop out.
    public boolean isRound() {
        return !form.isAt("round", "none");
    }
}
