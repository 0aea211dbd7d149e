package tamabako.desk.room.page;

import tamabako.desk.web.Request;

/// What was typed to sit down, to be sent once more with the wish to move.
///
/// @param pupil the identity of the name that was picked; blank for none
/// @param alias the name that was typed
/// @param pin the figures
public record TakenForm(String pupil, String alias, String pin) {

    static TakenForm of(Request request) {
        return new TakenForm(
                request.form().text("pupil"),
                request.form().text("alias"),
                request.form().text("pin"));
    }
}
