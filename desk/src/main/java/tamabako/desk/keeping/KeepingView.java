package tamabako.desk.keeping;

import java.util.List;
import java.util.Optional;

/// What the page shows beside its forms.
///
/// @param groups the names of the teacher's groups
/// @param done what was just done, in a sentence
/// @param rosterFault what stands against taking a roster
/// @param backupFault what stands against making a backup
/// @param restoreFault what stands against restoring one
/// @param mayKeepAll whether the reader may back up and restore
public record KeepingView(
        List<String> groups,
        Optional<String> done,
        Optional<String> rosterFault,
        Optional<String> backupFault,
        Optional<String> restoreFault,
        boolean mayKeepAll) {

    public KeepingView {
        groups = List.copyOf(groups);
    }
}
