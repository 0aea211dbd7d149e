package tamabako.problems.grade;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;

/// Where figures come from.
///
/// @param figures what the source is given for
/// @param source the body or page with its address, or that it is our own choice
/// @param confirmed whether the body itself, a chamber or the author says so; a secondary source,
///   memory and our own choice are unconfirmed
public record Cite(Set<Figure> figures, Label source, boolean confirmed) {

    public Cite {
        figures = Collections.unmodifiableSet(new TreeSet<>(figures));
    }
}
