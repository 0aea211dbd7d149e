package tamabako.paper.layout;

import java.util.List;

/// Pages on which everything has its place.
///
/// @param page what the pages are like
/// @param pages how many
/// @param elements what is read, in reading order
/// @param decorations what is only seen
public record Laid(Page page, int pages, List<Element> elements, List<Decoration> decorations) {

    public Laid {
        elements = List.copyOf(elements);
        decorations = List.copyOf(decorations);
    }
}
