package tamabako.desk.web;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/// Who may speak to the desk: only pages of the desk itself, under an address that is its own.
///
/// A page of another site cannot send the desk's forms (the browser tells where a form comes from
/// in Sec-Fetch-Site and Origin), and a name that someone lets point at this machine does not open
/// the desk (its Host is neither this machine's name nor a plain address).
final class Gate {

    private static final Pattern ADDRESS =
            Pattern.compile("\\d{1,3}(\\.\\d{1,3}){3}|\\[[0-9a-fA-F:.]+]");

    private static final Pattern PORT = Pattern.compile(":\\d{1,5}$");

    private final Set<String> names;

    /// @param names the names, beside plain addresses, under which the desk is known
    Gate(Set<String> names) {
        this.names = Set.copyOf(names);
    }

    /// Whether the Host of the request is one of the desk's own.
    boolean isOwnHost(Incoming incoming) {
        return incoming.header("Host")
                .map(host -> PORT.matcher(host).replaceFirst("").toLowerCase(Locale.ROOT))
                .filter(host -> names.contains(host) || ADDRESS.matcher(host).matches())
                .isPresent();
    }

    /// Whether a form comes from the desk's own pages. Programs that are no browser send neither
    /// header; they may do nothing in the name of someone who signed in at a browser.
    boolean isOwnForm(Incoming incoming, Who who) {
        Optional<String> site = incoming.header("Sec-Fetch-Site");
        if (site.isPresent()) {
            return site.get().equals("same-origin") || site.get().equals("none");
        }
        Optional<String> origin = incoming.header("Origin");
        if (origin.isEmpty()) {
            return !(who instanceof Who.SignedIn);
        }
        return authority(origin.get())
                .filter(place -> Optional.of(place).equals(incoming.header("Host")))
                .isPresent();
    }

    private static Optional<String> authority(String origin) {
        try {
            return Optional.ofNullable(new URI(origin).getAuthority());
        } catch (URISyntaxException noOrigin) {
            return Optional.empty();
        }
    }
}
