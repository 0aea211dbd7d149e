package tamabako.desk.book;

import java.time.InstantSource;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import tamabako.desk.sheet.Form;
import tamabako.desk.web.Access;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.Attended;
import tamabako.records.ClassBook;
import tamabako.records.Identity;
import tamabako.records.Note;
import tamabako.records.Pupil;
import tamabako.records.Result;

/// What is written down on the page of a pupil, or taken out of it again: notes, days, results.
///
/// @param page shows the page again where something cannot be taken
record PupilEntries(ClassBook book, PupilPage page, InstantSource clock) implements Routes {

    private static final int LONGEST_NOTE = 2_000;
    private static final int LONGEST_NAME = 80;
    private static final int MOST_POINTS = 99_999;

    @Override
    public List<Route> routes() {
        return List.of(
                Route.post("/book/pupils/{id}/notes", request -> of(request, this::addNote)).forWhom(Access.ASSISTANT),
                Route.post(
                        "/book/pupils/{id}/notes/{note}/remove",
                        request -> of(request, this::removeNote)),
                Route.post("/book/pupils/{id}/days", request -> of(request, this::setDay)).forWhom(Access.ASSISTANT),
                Route.post(
                        "/book/pupils/{id}/days/{day}/remove",
                        request -> of(request, this::removeDay)),
                Route.post("/book/pupils/{id}/results", request -> of(request, this::addResult)),
                Route.post(
                        "/book/pupils/{id}/results/{result}/remove",
                        request -> of(request, this::removeResult)));
    }

    /// Answers for one pupil.
    private interface Answer {
        Reply of(Request request, Pupil pupil);
    }

    private Reply of(Request request, Answer answer) {
        return Missing.orPupil(book, request, pupil -> answer.of(request, pupil));
    }

    private static Reply back(Pupil pupil, String part) {
        return Reply.seeOther("/book/pupils/" + pupil.id() + "#" + part);
    }

    private Reply addNote(Request request, Pupil pupil) {
        Form form = page.form(request);
        String words = form.text("note").strip();
        if (words.isEmpty()) {
            form.blame("note", request.words().say("book.note-empty"));
        } else if (words.length() > LONGEST_NOTE) {
            form.blame("note", request.words().say("form.long", LONGEST_NOTE));
        }
        if (!form.isGood()) {
            return page.page(400, request, pupil, form);
        }
        book.notes().keep(Note.of(pupil.id(), clock.instant(), words));
        return back(pupil, "notes");
    }

    private Reply removeNote(Request request, Pupil pupil) {
        book.notes().of(pupil.id()).stream()
                .map(Note::id)
                .filter(request.part("note")::equals)
                .forEach(book.notes()::remove);
        return back(pupil, "notes");
    }

    private Reply setDay(Request request, Pupil pupil) {
        Form form = page.form(request);
        LocalDate day = DayField.read(form, "day", page.today(), request.words());
        Optional<Attended.How> how = Hows.find(form.word("how", Hows.WORDS));
        if (!form.isGood() || how.isEmpty()) {
            return page.page(400, request, pupil, form);
        }
        book.attendance().keep(new Attended(pupil.id(), day, how.get()));
        return back(pupil, "attendance");
    }

    private Reply removeDay(Request request, Pupil pupil) {
        book.attendance().of(pupil.id()).stream()
                .map(Attended::day)
                .filter(day -> day.toString().equals(request.part("day")))
                .forEach(day -> book.attendance().forget(pupil.id(), day));
        return back(pupil, "attendance");
    }

    private Reply addResult(Request request, Pupil pupil) {
        Form form = page.form(request);
        String name = form.line("result", LONGEST_NAME);
        if (name.isBlank()) {
            form.blame("result", request.words().say("book.result-nameless"));
        }
        LocalDate day = DayField.read(form, "result-day", page.today(), request.words());
        boolean isExam = form.word("kind", List.of("exam", "contest")).equals("exam");
        Result result =
                new Result(
                        Identity.fresh(),
                        pupil.id(),
                        isExam ? Result.Kind.EXAM : Result.Kind.CONTEST,
                        name,
                        day,
                        score(form, request),
                        form.line("outcome", LONGEST_NAME));
        if (!form.isGood()) {
            return page.page(400, request, pupil, form);
        }
        book.results().keep(result);
        return back(pupil, "results");
    }

    private static Optional<Result.Score> score(Form form, Request request) {
        if (form.text("points").isBlank() && form.text("most").isBlank()) {
            return Optional.empty();
        }
        int points = form.whole("points", 0, MOST_POINTS);
        int most = form.whole("most", 1, MOST_POINTS);
        if (points > most) {
            form.blame("points", request.words().say("book.points-over", points, most));
        }
        return Optional.of(new Result.Score(points, most));
    }

    private Reply removeResult(Request request, Pupil pupil) {
        book.results().of(pupil.id()).stream()
                .map(Result::id)
                .filter(request.part("result")::equals)
                .forEach(book.results()::remove);
        return back(pupil, "results");
    }
}
