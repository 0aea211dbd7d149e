package tamabako.desk.work;

import java.util.ArrayList;
import java.util.List;

/// Steps one after another that the same thing asked for, such as all those of row 2.
///
/// @param label what asked for them
/// @param setting whether they set the operands
/// @param first the number of the first of them in the whole run, from 1
/// @param notes the steps
public record StepGroup(String label, boolean setting, int first, List<StepNote> notes) {

    public StepGroup {
        notes = List.copyOf(notes);
    }

    /// The groups of a run of steps, whose first has the number `first`.
    static List<StepGroup> all(List<StepNote> notes, boolean setting, int first) {
        List<StepGroup> groups = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= notes.size(); i++) {
            boolean ends =
                    i == notes.size() || !notes.get(i).label().equals(notes.get(from).label());
            if (ends) {
                List<StepNote> run = notes.subList(from, i);
                groups.add(new StepGroup(run.getFirst().label(), setting, first + from, run));
                from = i;
            }
        }
        return groups;
    }
}
