package tamabako.desk.book;

import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tamabako.desk.sheet.Form;
import tamabako.desk.web.Access;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Identity;
import tamabako.records.Pupil;

/// The page of one group: its pupils, a new one, another name.
record GroupPage(ClassBook book, InstantSource clock, ZoneId zone) implements Routes {

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get("/book/groups/{id}", request -> in(request, this::show)).forWhom(Access.ASSISTANT),
                Route.post("/book/groups/{id}/rename", request -> in(request, this::rename)),
                Route.post("/book/groups/{id}/remove", request -> in(request, this::remove)),
                Route.post("/book/groups/{id}/pupils", request -> in(request, this::addPupil)));
    }

    /// Answers for one group.
    private interface Answer {
        Reply of(Request request, Group group);
    }

    private Reply in(Request request, Answer answer) {
        return Missing.orGroup(book, request, group -> answer.of(request, group));
    }

    private Reply show(Request request, Group group) {
        return page(200, request, group, PupilForm.of(request, blank(request, group)));
    }

    /// A new pupil, before anything is known.
    private static Pupil blank(Request request, Group group) {
        Locale language = request.words().language();
        return new Pupil(Identity.fresh(), group.id(), "", language, group.demo());
    }

    private Reply page(int status, Request request, Group group, Form form) {
        Telling telling = new Telling(clock, zone, request.words());
        Map<String, String> seen = book.pupils().lastSeen();
        List<GroupView.Line> lines =
                book.pupils().in(group.id()).stream()
                        .map(pupil ->
                                new GroupView.Line(
                                        pupil, telling.day(seen.getOrDefault(pupil.id(), ""))))
                        .toList();
        return new Reply.Page(
                status, "book/group.jte", Map.of("page", new GroupView(group, form, lines)));
    }

    private Reply rename(Request request, Group group) {
        Form form = PupilForm.of(request, blank(request, group));
        String name = GroupName.read(form, book, group.id(), request.words());
        if (!form.isGood()) {
            return page(400, request, group, form);
        }
        book.groups().keep(new Group(group.id(), name, group.demo()));
        return Reply.seeOther("/book/groups/" + group.id());
    }

    /// Only an empty group is removed, so that no pupil's year goes with one click.
    private Reply remove(Request request, Group group) {
        int pupils = book.pupils().in(group.id()).size();
        if (pupils > 0) {
            Form form = PupilForm.of(request, blank(request, group));
            form.blame("remove", request.words().count("book.group-not-empty", pupils));
            return page(400, request, group, form);
        }
        book.groups().remove(group.id());
        return Reply.seeOther("/book");
    }

    private Reply addPupil(Request request, Group group) {
        Pupil blank = blank(request, group);
        Form form = PupilForm.of(request, blank);
        Telling telling = new Telling(clock, zone, request.words());
        Pupil pupil = new PupilForm(book, telling).read(form, blank);
        if (!form.isGood()) {
            return page(400, request, group, form);
        }
        book.pupils().keep(pupil);
        return Reply.seeOther("/book/groups/" + group.id() + "#pupil-" + pupil.id());
    }
}
