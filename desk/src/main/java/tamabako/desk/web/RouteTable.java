package tamabako.desk.web;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// Finds the route of an address.
final class RouteTable {

    private final List<Route> routes;

    RouteTable(List<Route> routes) {
        this.routes = List.copyOf(routes);
    }

    /// What came of looking an address up.
    sealed interface Found {
        /// Here it is, with the named parts of the address.
        record Here(Route route, Map<String, String> parts) implements Found {}

        /// There is such an address, but something else is done there.
        record OtherVerb(Set<Verb> allowed) implements Found {}

        /// There is no such address.
        record Nowhere() implements Found {}
    }

    /// Looks up `path` for `verb`; empty stands for a verb that nothing at the desk understands.
    Found find(Optional<Verb> verb, String path) {
        Set<Verb> allowed = EnumSet.noneOf(Verb.class);
        for (Route route : routes) {
            Optional<Map<String, String>> parts = route.match(path);
            if (parts.isPresent()) {
                if (Optional.of(route.verb()).equals(verb)) {
                    return new Found.Here(route, parts.get());
                }
                allowed.add(route.verb());
            }
        }
        return allowed.isEmpty() ? new Found.Nowhere() : new Found.OtherVerb(allowed);
    }
}
