package tamabako.desk.entry;

import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import tamabako.desk.web.Access;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.problems.Sheet;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Handout;

/// Notes that a sheet, or a form of a paper, was handed out to a group.
record HandingOut(ClassBook book, EntrySheets sheets, InstantSource clock) implements Routes {

    @Override
    public List<Route> routes() {
        return List.of(
                Route.post("/handouts", this::handOut).forWhom(Access.ASSISTANT),
                Route.post("/handouts/{id}/remove", this::takeBack).forWhom(Access.ASSISTANT));
    }

    private Reply handOut(Request request) {
        Optional<Group> group = book.groups().find(request.form().text("group"));
        if (group.isEmpty()) {
            return Reply.trouble(404, "entry-group");
        }
        String number = request.form().text("sheet");
        Optional<Sheet> sheet = sheets.forWork(number, request.words());
        if (sheet.isEmpty()) {
            return Reply.trouble(404, "no-sheet", number);
        }
        book.handouts().keep(Handout.of(sheet.get().id(), group.get(), clock.instant()));
        return request.form().text("back").equals("entry")
                ? Reply.seeOther("/entry/%s?group=%s".formatted(sheet.get().id(), group.get().id()))
                : Reply.seeOther("/sheets/" + sheet.get().id() + "#handed");
    }

    private Reply takeBack(Request request) {
        book.handouts().remove(request.part("id"));
        String sheet = request.form().text("sheet");
        return book.sheets().find(sheet).isPresent()
                ? Reply.seeOther("/sheets/" + sheet + "#handed")
                : Reply.seeOther("/entry");
    }
}
