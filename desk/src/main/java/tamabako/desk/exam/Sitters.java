package tamabako.desk.exam;

import java.util.List;
import tamabako.records.Pupil;

/// Those whose outcomes are written down: a group, or one pupil.
///
/// @param name of the group or the pupil
/// @param address of its page
public record Sitters(String name, String address, List<Pupil> pupils) {

    public Sitters {
        pupils = List.copyOf(pupils);
    }

    /// Whether it is one pupil and no group.
    public boolean isOne() {
        return address.startsWith("/book/pupils/");
    }
}
