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
/// @param who who asks
/// @param caller where from, and with which cookies
public record Request(
        Verb verb,
        String path,
        Map<String, String> parts,
        Fields query,
        Fields form,
        Words words,
        String here,
        Who who,
        Caller caller) {

    public Request {
        parts = Map.copyOf(parts);
    }

    /// A request of whoever sits at this computer, where no network is between them and the page.
    public Request(
            Verb verb,
            String path,
            Map<String, String> parts,
            Fields query,
            Fields form,
            Words words,
            String here) {
        this(
                verb,
                path,
                parts,
                query,
                form,
                words,
                here,
                new Who.AtThisComputer(),
                new Caller("", false, Map.of(), "localhost"));
    }

    /// The part of the address that the route's pattern names so.
    public String part(String name) {
        return Optional.ofNullable(parts.get(name))
                .orElseThrow(() -> new IllegalArgumentException("No part named " + name + "."));
    }
}
