package tamabako.desk.book;

import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import tamabako.desk.book.ClassBookView.Due;
import tamabako.desk.book.ClassBookView.GroupCard;
import tamabako.desk.sheet.Form;
import tamabako.desk.web.Access;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Pupil;
import tamabako.records.Retention;

/// The class book's first page: the groups, and who has not been seen for long.
record GroupsPage(ClassBook book, InstantSource clock, ZoneId zone) implements Routes {

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get("/book", request -> page(200, request, form(request))).forWhom(Access.ASSISTANT),
                Route.post("/book/groups", this::add),
                Route.post("/book/retention", this::setRetention));
    }

    private Form form(Request request) {
        return new Form(request, Map.of("months", "" + Retention.of(book).months()));
    }

    private Reply page(int status, Request request, Form form) {
        Telling telling = new Telling(clock, zone, request.words());
        List<Pupil> pupils = book.pupils().all();
        Retention retention = Retention.of(book);
        ClassBookView view =
                new ClassBookView(
                        form,
                        book.groups().all().stream().map(group -> card(group, pupils)).toList(),
                        retention.months(),
                        retention.due(book, telling.today()).stream()
                                .map(due -> new Due(due.pupil(), telling.day(due.lastSeen())))
                                .toList());
        return new Reply.Page(status, "book/groups.jte", Map.of("page", view));
    }

    private static GroupCard card(Group group, List<Pupil> pupils) {
        return new GroupCard(
                group,
                pupils.stream().filter(pupil -> pupil.groupId().equals(group.id())).toList());
    }

    private Reply add(Request request) {
        Form form = form(request);
        String name = GroupName.read(form, book, "", request.words());
        if (!form.isGood()) {
            return page(400, request, form);
        }
        Group group = Group.of(name);
        book.groups().keep(group);
        return Reply.seeOther("/book/groups/" + group.id());
    }

    private Reply setRetention(Request request) {
        Form form = form(request);
        int months = form.whole("months", Retention.LEAST, Retention.MOST);
        if (!form.isGood()) {
            return page(400, request, form);
        }
        new Retention(months).keepIn(book);
        return Reply.seeOther("/book#retention");
    }
}
