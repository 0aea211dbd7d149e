package tamabako.paper.layout;

import java.util.List;

/// Something that is read. Elements form a tree in reading order.
public sealed interface Element {

    /// What the element is.
    Role role();

    /// An element made of elements.
    record Group(Role role, List<Element> parts) implements Element {
        public Group {
            parts = List.copyOf(parts);
        }
    }

    /// An element that stands on a page. An empty cell has no marks.
    ///
    /// @param page the page, from 0
    record Leaf(Role role, int page, List<Mark> marks) implements Element {
        public Leaf {
            marks = List.copyOf(marks);
        }
    }
}
