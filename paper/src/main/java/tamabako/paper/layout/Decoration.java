package tamabako.paper.layout;

import java.util.List;

/// Something that is only seen: rules, boxes, row numbers, page numbers.
///
/// @param page the page, from 0
public record Decoration(int page, List<Mark> marks) {

    public Decoration {
        marks = List.copyOf(marks);
    }
}
