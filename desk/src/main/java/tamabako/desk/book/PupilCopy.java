package tamabako.desk.book;

import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.ClassBook;
import tamabako.records.Pupil;
import tamabako.records.export.PupilExport;
import tamabako.records.export.PupilJson;

/// All that the class book knows of one pupil: a page to read or print, and JSON.
record PupilCopy(ClassBook book, InstantSource clock, ZoneId zone) implements Routes {

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get(
                        "/book/pupils/{id}/copy",
                        request -> Missing.orPupil(book, request, pupil -> page(request, pupil))),
                Route.get(
                        "/book/pupils/{id}.json",
                        request -> Missing.orPupil(book, request, this::json)));
    }

    private Reply page(Request request, Pupil pupil) {
        Telling telling = new Telling(clock, zone, request.words());
        PupilExport known = PupilExport.of(book, pupil);
        CopyView view =
                new CopyView(
                        pupil,
                        known.group(),
                        telling.day(clock.instant()),
                        known.attendance().stream()
                                .map(one ->
                                        new AttendancePart.Day(
                                                one.day().toString(),
                                                telling.day(one.day()),
                                                Hows.word(one.how())))
                                .toList(),
                        NotesPart.of(book, pupil, telling),
                        ResultsPart.of(book, pupil, telling),
                        WorkPart.of(known, telling, Integer.MAX_VALUE),
                        known.drafts());
        return Reply.page("book/copy.jte", Map.of("page", view));
    }

    /// The file is named by the pupil's number, not by the name.
    private Reply json(Pupil pupil) {
        String text = PupilJson.write(PupilExport.of(book, pupil), clock.instant());
        String name = "attachment; filename=\"pupil-" + pupil.id() + ".json\"";
        return new Reply.Bytes(
                200,
                "application/json",
                Map.of("Content-Disposition", name),
                text.getBytes(StandardCharsets.UTF_8));
    }
}
