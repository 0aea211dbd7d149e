package tamabako.desk.account;

import java.util.List;
import java.util.Map;

/// What the page of one's own account shows.
///
/// @param name what they are called
/// @param owner whether the desk is theirs
/// @param places where they are signed in, this browser among them
/// @param faults what is wrong with a field, by its name
public record OwnView(String name, boolean owner, List<Place> places, Map<String, String> faults) {

    public OwnView {
        places = List.copyOf(places);
        faults = Map.copyOf(faults);
    }

    /// What is wrong with that field, empty where nothing is.
    public String fault(String field) {
        return faults.getOrDefault(field, "");
    }

    /// A browser where they are signed in.
    ///
    /// @param id of the sign-in
    /// @param address the network address
    /// @param begun when they signed in there
    /// @param seen when it was seen last
    /// @param here whether it is the one that shows the page
    public record Place(String id, String address, String begun, String seen, boolean here) {}
}
