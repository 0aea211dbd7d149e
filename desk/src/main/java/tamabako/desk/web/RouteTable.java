package tamabako.desk.web;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// Finds the route of an address.
final class RouteTable {

    /// Stands for addresses that begin with a name in braces.
    private static final String NAMED = "{";

    /// The routes by the first part of their addresses, so that few have to be looked at.
    private final Map<String, List<Route>> routes = new HashMap<>();

    RouteTable(List<Route> routes) {
        for (Route route : routes) {
            String first = first(route.address());
            String key = first.contains("{") ? NAMED : first;
            this.routes.computeIfAbsent(key, _ -> new ArrayList<>()).add(route);
        }
    }

    private static String first(String address) {
        int end = address.indexOf('/', 1);
        return end < 0 ? address : address.substring(0, end);
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
        List<Route> near = new ArrayList<>(routes.getOrDefault(first(path), List.of()));
        near.addAll(routes.getOrDefault(NAMED, List.of()));
        for (Route route : near) {
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
