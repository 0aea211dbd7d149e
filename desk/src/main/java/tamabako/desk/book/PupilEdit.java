package tamabako.desk.book;

import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import tamabako.desk.sheet.Form;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.ClassBook;
import tamabako.records.Pupil;

/// The page on which what is written down about a pupil is changed, and the pupil moved to another
/// group.
record PupilEdit(ClassBook book, InstantSource clock, ZoneId zone) implements Routes {

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get(
                        "/book/pupils/{id}/edit",
                        request ->
                                Missing.orPupil(
                                        book,
                                        request,
                                        pupil -> page(200, pupil, PupilForm.of(request, pupil)))),
                Route.post(
                        "/book/pupils/{id}/edit",
                        request -> Missing.orPupil(book, request, pupil -> keep(request, pupil))));
    }

    private Reply page(int status, Pupil pupil, Form form) {
        return new Reply.Page(
                status,
                "book/edit.jte",
                Map.of("pupil", pupil, "form", form, "groups", PupilForm.groups(book, pupil)));
    }

    private Reply keep(Request request, Pupil before) {
        Form form = PupilForm.of(request, before);
        Telling telling = new Telling(clock, zone, request.words());
        Pupil pupil = new PupilForm(book, telling).read(form, before);
        if (!form.isGood()) {
            return page(400, before, form);
        }
        book.pupils().keep(pupil);
        return Reply.seeOther("/book/pupils/" + pupil.id());
    }
}
