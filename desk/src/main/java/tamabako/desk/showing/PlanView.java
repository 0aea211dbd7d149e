package tamabako.desk.showing;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import tamabako.desk.sheet.Form;
import tamabako.records.Pupil;

/// The page on which a showing is planned.
///
/// @param form the fields
/// @param cautionRead whether the caution was read and ticked before
/// @param seats the classroom's screen and nearest seat, if they were told
/// @param seatsForm the form that asks for them
/// @param sheets the sheets whose columns may be shown
/// @param pupils for whom it may be
/// @param trouble why the sum cannot be made, if it cannot
public record PlanView(
        Form form,
        boolean cautionRead,
        Optional<Seats> seats,
        Form seatsForm,
        List<Listed> sheets,
        List<Pupil> pupils,
        Optional<String> trouble) {

    /// A sheet with columns.
    public record Listed(String id, String title) {}

    public PlanView {
        sheets = List.copyOf(sheets);
        pupils = List.copyOf(pupils);
    }

    /// The fields of the plan that are sent along with the forms beside it.
    public static Set<String> keptNames() {
        return ShowingForm.NAMES;
    }
}
