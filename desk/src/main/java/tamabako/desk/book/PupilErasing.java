package tamabako.desk.book;

import java.text.Normalizer;
import java.util.List;
import java.util.Map;
import tamabako.desk.sheet.Form;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.ClassBook;
import tamabako.records.Pupil;

/// The page on which a pupil is erased, once the name was typed. Whatever keeps traces lets go of
/// them first; where a room still names the pupil, nothing more is erased.
record PupilErasing(ClassBook book, List<PupilTraces> traces) implements Routes {

    PupilErasing {
        traces = List.copyOf(traces);
    }

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get(
                        "/book/pupils/{id}/erase",
                        request ->
                                Missing.orPupil(
                                        book,
                                        request,
                                        pupil -> page(200, pupil, new Form(request, Map.of())))),
                Route.post(
                        "/book/pupils/{id}/erase",
                        request -> Missing.orPupil(book, request, pupil -> erase(request, pupil))));
    }

    private static Reply page(int status, Pupil pupil, Form form) {
        return new Reply.Page(status, "book/erase.jte", Map.of("pupil", pupil, "form", form));
    }

    /// A name without what cannot be seen, and in letters of one width.
    private static String plain(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFKC).replaceAll("\\p{Cf}", "").strip();
    }

    private Reply erase(Request request, Pupil pupil) {
        Form form = new Form(request, Map.of());
        if (!plain(form.text("name")).equals(plain(pupil.name()))) {
            form.blame("name", request.words().say("book.erase-other", pupil.name()));
            return page(400, pupil, form);
        }
        traces.forEach(trace -> trace.erase(pupil.id()));
        if (!book.rooms().naming(pupil.id()).isEmpty()) {
            form.blame("name", request.words().say("book.erase-in-room", pupil.name()));
            return page(400, pupil, form);
        }
        book.pupils().erase(pupil.id());
        return Reply.seeOther("/book/groups/" + pupil.groupId());
    }
}
