package tamabako.desk.book;

import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import tamabako.desk.sheet.Form;
import tamabako.desk.web.Access;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.ClassBook;
import tamabako.records.Pupil;
import tamabako.records.export.PupilExport;

/// The page of one pupil.
record PupilPage(ClassBook book, InstantSource clock, ZoneId zone) implements Routes {

    /// How many pieces of work are shown.
    private static final int LATEST = 10;

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get(
                        "/book/pupils/{id}",
                        request ->
                                Missing.orPupil(
                                        book,
                                        request,
                                        pupil -> page(200, request, pupil, form(request)))).forWhom(Access.ASSISTANT));
    }

    /// The day of today.
    LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), zone);
    }

    /// The forms of the page, as they stand before anyone wrote in them.
    Form form(Request request) {
        String today = today().toString();
        return new Form(
                request,
                Map.of(
                        "day", today,
                        "result-day", today,
                        "kind", "exam"));
    }

    /// The page with its forms as they came.
    Reply page(int status, Request request, Pupil pupil, Form form) {
        Telling telling = new Telling(clock, zone, request.words());
        PupilExport known = PupilExport.of(book, pupil);
        PupilView view =
                new PupilView(
                        pupil,
                        known.group(),
                        form,
                        WorkPart.of(known, telling, LATEST),
                        AttendancePart.of(book, pupil, telling),
                        NotesPart.of(book, pupil, telling),
                        ResultsPart.of(book, pupil, telling));
        return new Reply.Page(status, "book/pupil.jte", Map.of("page", view));
    }
}
