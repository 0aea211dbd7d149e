package tamabako.desk.book;

import java.time.DateTimeException;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tamabako.desk.web.Access;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.Attended;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Pupil;

/// The page on which a group's attendance is noted, one press a pupil.
record AttendancePage(ClassBook book, InstantSource clock, ZoneId zone) implements Routes {

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get(
                        "/book/groups/{id}/attendance",
                        request -> Missing.orGroup(book, request, group -> show(request, group))).forWhom(Access.ASSISTANT),
                Route.post(
                        "/book/groups/{id}/attendance",
                        request -> Missing.orGroup(book, request, group -> note(request, group))).forWhom(Access.ASSISTANT));
    }

    /// The day that is asked for, today where none is; nothing where it is none or still to come.
    private Optional<LocalDate> day(Fields fields) {
        LocalDate today = LocalDate.ofInstant(clock.instant(), zone);
        try {
            String asked = fields.text("day");
            LocalDate day = asked.isEmpty() ? today : LocalDate.parse(asked);
            return Optional.of(day).filter(one -> !one.isAfter(today) && one.getYear() >= 1900);
        } catch (DateTimeException unreadable) {
            return Optional.empty();
        }
    }

    private Reply show(Request request, Group group) {
        Optional<LocalDate> asked = day(request.query());
        if (asked.isEmpty()) {
            return Reply.trouble(400, "book-day");
        }
        LocalDate day = asked.get();
        Telling telling = new Telling(clock, zone, request.words());
        Map<String, String> noted = noted(day);
        AttendanceView view =
                new AttendanceView(
                        group,
                        day.toString(),
                        telling.day(day),
                        day.minusDays(1).toString(),
                        day.isBefore(telling.today()) ? day.plusDays(1).toString() : "",
                        book.pupils().in(group.id()).stream()
                                .map(pupil ->
                                        new AttendanceView.Line(
                                                pupil, noted.getOrDefault(pupil.id(), "")))
                                .toList());
        return Reply.page("book/attendance.jte", Map.of("page", view));
    }

    private Map<String, String> noted(LocalDate day) {
        return book.attendance().on(day).stream()
                .collect(Collectors.toMap(Attended::pupilId, one -> Hows.word(one.how())));
    }

    private Reply note(Request request, Group group) {
        Optional<LocalDate> asked = day(request.form());
        if (asked.isEmpty()) {
            return Reply.trouble(400, "book-day");
        }
        LocalDate day = asked.get();
        Map<String, String> noted = noted(day);
        List<Pupil> pupils = book.pupils().in(group.id());
        book.whole(() -> pupils.forEach(pupil -> note(request.form(), pupil, day, noted)));
        return Reply.seeOther("/book/groups/" + group.id() + "/attendance?day=" + day);
    }

    /// What was pressed for one pupil. Pressing what is noted already takes it back; the button for
    /// the rest leaves those alone who have something noted.
    private void note(Fields form, Pupil pupil, LocalDate day, Map<String, String> noted) {
        String now = noted.getOrDefault(pupil.id(), "");
        for (Attended.How how : Attended.How.values()) {
            String word = Hows.word(how);
            if (form.all(word).contains(pupil.id())) {
                if (word.equals(now)) {
                    book.attendance().forget(pupil.id(), day);
                } else {
                    book.attendance().keep(new Attended(pupil.id(), day, how));
                }
                return;
            }
        }
        if (form.has("rest") && now.isEmpty()) {
            book.attendance().keep(new Attended(pupil.id(), day, Attended.How.PRESENT));
        }
    }
}
