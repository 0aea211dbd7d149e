package tamabako.desk.account;

import java.util.Map;

/// What the page of the first start shows.
///
/// @param name the name typed so far
/// @param needsCode whether the code from the console is asked for
/// @param mayGoWithout whether the desk may go on without passwords
/// @param hasDemo whether the demo class is in the book
/// @param faults what is wrong with a field, by its name
public record FirstView(
        String name,
        boolean needsCode,
        boolean mayGoWithout,
        boolean hasDemo,
        Map<String, String> faults) {

    public FirstView {
        faults = Map.copyOf(faults);
    }

    /// What is wrong with that field, empty where nothing is.
    public String fault(String field) {
        return faults.getOrDefault(field, "");
    }
}
