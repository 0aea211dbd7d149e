package tamabako.desk.exam;

import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.book.Missing;
import tamabako.desk.ladder.KnownLadders;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.KeptOutcome;
import tamabako.records.Pupil;

/// The pages on which the outcomes of exams are written down.
public final class ExamPages implements Routes {

    private final ClassBook book;
    private final KnownLadders ladders;
    private final InstantSource clock;
    private final ZoneId zone;

    /// @param clock tells the moment
    /// @param zone where the lessons are held
    public ExamPages(ClassBook book, InstantSource clock, ZoneId zone) {
        this.book = book;
        this.ladders = new KnownLadders(book.ladders());
        this.clock = clock;
        this.zone = zone;
    }

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get("/book/groups/{id}/exams", request -> ofGroup(request, this::show)),
                Route.post("/book/groups/{id}/exams", request -> ofGroup(request, this::keep)),
                Route.get("/book/pupils/{id}/exams", request -> ofPupil(request, this::show)),
                Route.post("/book/pupils/{id}/exams", request -> ofPupil(request, this::keep)));
    }

    @Override
    public List<String> wordFiles() {
        return List.of("exams");
    }

    /// Answers for some pupils.
    private interface Answer {
        Reply of(Request request, Sitters sitters);
    }

    private Reply ofGroup(Request request, Answer answer) {
        return Missing.orGroup(
                book,
                request,
                group ->
                        answer.of(
                                request,
                                new Sitters(
                                        group.name(),
                                        "/book/groups/" + group.id(),
                                        book.pupils().in(group.id()))));
    }

    private Reply ofPupil(Request request, Answer answer) {
        return Missing.orPupil(
                book,
                request,
                pupil ->
                        answer.of(
                                request,
                                new Sitters(
                                        pupil.name(),
                                        "/book/pupils/" + pupil.id(),
                                        List.of(pupil))));
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), zone);
    }

    private Reply show(Request request, Sitters sitters) {
        ChosenExam.Read read = ChosenExam.read(request.query(), ladders, today(), request.words());
        Optional<ExamGrid> grid =
                read.chosen().map(exam -> ExamGrid.of(exam, sitters.pupils(), kept(exam), request));
        return page(200, request, sitters, read, grid);
    }

    private List<KeptOutcome> kept(ChosenExam exam) {
        return book.exams().on(exam.day()).stream()
                .filter(one -> one.outcome().ladder().equals(exam.ladder().id()))
                .filter(one -> one.outcome().grade().equals(exam.grade().id()))
                .toList();
    }

    private Reply page(
            int status,
            Request request,
            Sitters sitters,
            ChosenExam.Read read,
            Optional<ExamGrid> grid) {
        List<PastExam> past = new ArrayList<>();
        for (Pupil pupil : sitters.pupils()) {
            for (KeptOutcome one : book.exams().of(pupil.id())) {
                past.add(new PastExam(pupil, one.outcome()));
            }
        }
        ExamView view =
                new ExamView(
                        sitters,
                        parent(sitters),
                        read,
                        ExamChoice.all(ladders, read, request.words().language()),
                        grid,
                        PastExam.lines(past, ladders, request.words().language()));
        return new Reply.Page(status, "exam/exams.jte", Map.of("page", view));
    }

    /// The name of the group of a pupil who is alone; nothing for a group.
    private Optional<Group> parent(Sitters sitters) {
        return sitters.isOne()
                ? book.groups().find(sitters.pupils().getFirst().groupId())
                : Optional.empty();
    }

    private Reply keep(Request request, Sitters sitters) {
        ChosenExam.Read read = ChosenExam.read(request.form(), ladders, today(), request.words());
        if (read.chosen().isEmpty()) {
            return page(400, request, sitters, read, Optional.empty());
        }
        ChosenExam exam = read.chosen().get();
        ExamLines lines = ExamLines.read(exam, sitters.pupils(), request);
        if (!lines.isGood()) {
            ExamGrid typed = ExamGrid.typed(exam, sitters.pupils(), lines, request);
            return page(400, request, sitters, read, Optional.of(typed));
        }
        book.whole(() -> {
            lines.open().forEach(pupil -> forget(pupil, exam));
            lines.outcomes().forEach((pupil, one) -> book.exams().keep(KeptOutcome.of(pupil, one)));
        });
        return Reply.seeOther(sitters.address() + "/exams?" + exam.query());
    }

    private void forget(String pupil, ChosenExam exam) {
        book.exams().forget(pupil, exam.day(), exam.ladder().id(), exam.grade().id());
    }
}
