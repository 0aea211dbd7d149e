package tamabako.paper.layout;

import java.util.List;
import tamabako.paper.layout.Mark.Words;

/// The foot of every page: the opaque name of what is printed, and the number of the page.
///
/// @param name what stands at the left
record Foot(String name, Setting setting) {

    List<Mark> of(int page, int pages) {
        double size = setting.pick(8, 12);
        double baseline = setting.page().foot();
        String number = setting.words().say("page", String.valueOf(page), String.valueOf(pages));
        double room = setting.across() * 0.8;
        String shown = Lines.of(setting, Face.REGULAR, size, name, room, 1).getFirst();
        return List.of(
                new Words(setting.left(), baseline, Face.REGULAR, size, Ink.SOFT, shown),
                setting.endingAt(setting.right(), baseline, Face.REGULAR, size, Ink.SOFT, number));
    }
}
