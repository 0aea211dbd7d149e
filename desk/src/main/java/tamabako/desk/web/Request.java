package tamabako.desk.web;

import java.util.Map;
import java.util.Optional;

/// What a visitor asks for, already read and found well-formed.
///
/// @param verb looking, or sending a form
/// @param path the address without its query, such as `/sheets/k7f2.pdf`
/// @param parts what stood where the route's pattern has names in braces
/// @param query the fields of the address
/// @param form the fields of the form; none where nothing was sent
/// @param words the texts of the reader's language
/// @param here the address as it can be asked for again, with its query
public record Request(
        Verb verb,
        String path,
        Map<String, String> parts,
        Fields query,
        Fields form,
        Words words,
        String here) {

    public Request {
        parts = Map.copyOf(parts);
    }

    /// The part of the address that the route's pattern names so.
    public String part(String name) {
        return Optional.ofNullable(parts.get(name))
                .orElseThrow(() -> new IllegalArgumentException("No part named " + name + "."));
    }
}
