package tamabako.paper.layout;

import java.util.List;
import tamabako.paper.layout.Mark.Words;
import tamabako.problems.Sheet;

/// The foot of every page: the opaque name of the sheet, and the number of the page.
record Foot(Sheet sheet, Setting setting) {

    List<Mark> of(int page, int pages) {
        double size = setting.pick(8, 12);
        String number = setting.words().say("page", String.valueOf(page), String.valueOf(pages));
        String name = setting.words().say("sheet", sheet.id());
        String id = Lines.of(setting, Face.REGULAR, size, name, Page.across() * 0.8, 1).getFirst();
        return List.of(
                new Words(Page.LEFT, Page.FOOT, Face.REGULAR, size, Ink.SOFT, id),
                setting.endingAt(Page.RIGHT, Page.FOOT, Face.REGULAR, size, Ink.SOFT, number));
    }
}
