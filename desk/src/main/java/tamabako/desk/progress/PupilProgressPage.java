package tamabako.desk.progress;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import tamabako.desk.book.Missing;
import tamabako.desk.ladder.KnownLadders;
import tamabako.desk.web.Access;
import tamabako.desk.web.Days;
import tamabako.desk.web.OwnAddress;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.desk.web.Words;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Pupil;

/// The page of a pupil's progress: readiness, mastery, slips and pace.
record PupilProgressPage(
        ClassBook book, Progress progress, ChosenLadder chosen, NextOnLadder next, PastExams exams)
        implements Routes {

    /// How many grades ahead are shown.
    private static final int GRADES = 3;

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get(
                                "/book/pupils/{id}/progress",
                                request ->
                                        Missing.orPupil(
                                                book, request, pupil -> page(request, pupil)))
                        .forWhom(Access.ASSISTANT),
                Route.post("/progress/ladder", this::choose).forWhom(Access.ASSISTANT));
    }

    private Reply choose(Request request) {
        chosen.choose(request.form().text("ladder"));
        return Reply.seeOther(OwnAddress.orHome(request.form().text("back")));
    }

    private Reply page(Request request, Pupil pupil) {
        Words words = request.words();
        Locale language = words.language();
        Judged judged = progress.of(pupil);
        PupilProgressView view =
                new PupilProgressView(
                        pupil,
                        book.groups().find(pupil.groupId()).map(Group::name).orElse(""),
                        summary(judged, words),
                        new ReadinessPart(
                                next.ladder().name().in(language),
                                chosen.choices(language),
                                next.of(judged, GRADES).stream()
                                        .map(one -> ReadinessPart.line(one, language))
                                        .toList()),
                        judged.mastery().stream()
                                .map(mastery -> MasteryPart.of(mastery, language))
                                .toList(),
                        SlipsPart.of(judged.slips(), judged.gathered().days(), words),
                        PacePart.of(judged.pace(), language),
                        ExamsPart.of(exams.of(pupil), new KnownLadders(book.ladders()), words));
        return Reply.page("progress/pupil.jte", Map.of("page", view));
    }

    private static String summary(Judged judged, Words words) {
        if (judged.answers() == 0) {
            return words.say("progress.no-work");
        }
        return words.say(
                "progress.summary",
                judged.answers(),
                judged.right(),
                judged.gathered().days().size(),
                Days.say(judged.gathered().days().getLast().day(), words.language()));
    }
}
