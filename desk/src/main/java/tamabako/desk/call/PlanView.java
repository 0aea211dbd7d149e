package tamabako.desk.call;

import java.util.List;
import tamabako.desk.sheet.Form;
import tamabako.records.KeptSheet;

/// The plan of what is called, as the page shows it.
///
/// @param form the fields and their faults
/// @param sheets the last sheets that hold columns, the newest first
public record PlanView(Form form, List<KeptSheet> sheets) {

    public PlanView {
        sheets = List.copyOf(sheets);
    }
}
