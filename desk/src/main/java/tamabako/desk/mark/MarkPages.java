package tamabako.desk.mark;

import java.time.InstantSource;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.web.Access;
import tamabako.desk.web.Days;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.desk.web.Words;
import tamabako.problems.Problem;
import tamabako.records.ClassBook;
import tamabako.records.KeptSheet;
import tamabako.records.Pupil;
import tamabako.records.Work;

/// The pages on which answers are marked.
public final class MarkPages implements Routes {

    private static final int LATEST = 30;

    private final ClassBook book;
    private final AnswersPage answers;
    private final Days days;

    /// @param clock tells when work was handed in
    /// @param zone where the days are told
    public MarkPages(ClassBook book, InstantSource clock, ZoneId zone) {
        this.book = book;
        this.answers = new AnswersPage(book, clock);
        this.days = new Days(zone);
    }

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get("/mark", this::choose).forWhom(Access.ASSISTANT),
                Route.get("/mark/{id}", answers::ask).forWhom(Access.ASSISTANT),
                Route.post("/mark/{id}", answers::take).forWhom(Access.ASSISTANT),
                Route.get("/marked/{id}", this::show).forWhom(Access.ASSISTANT));
    }

    private Reply choose(Request request) {
        String number = request.query().text("sheet").toUpperCase(Locale.ROOT);
        if (!number.isEmpty() && book.sheets().find(number).isPresent()) {
            return Reply.seeOther("/mark/" + number);
        }
        List<ChooseView.Entry> sheets =
                book.sheets().latest(LATEST).stream()
                        .map(kept -> entry(kept, request.words()))
                        .toList();
        return new Reply.Page(
                number.isEmpty() ? 200 : 404,
                "mark/choose.jte",
                Map.of("choose", new ChooseView(number, sheets)));
    }

    private ChooseView.Entry entry(KeptSheet kept, Words words) {
        return new ChooseView.Entry(
                kept.sheet().id(),
                kept.sheet().title(),
                kept.sheet().problems().size(),
                days.say(kept.keptAt(), words.language()),
                kept.demo());
    }

    private Reply show(Request request) {
        Optional<Work> found = book.work().find(request.part("id"));
        Optional<KeptSheet> kept = found.flatMap(work -> book.sheets().find(work.sheetId()));
        if (found.isEmpty() || kept.isEmpty()) {
            return Reply.trouble(404, "no-work");
        }
        return Reply.page(
                "mark/result.jte",
                Map.of("result", result(found.get(), kept.get(), request.words())));
    }

    private ResultView result(Work work, KeptSheet kept, Words words) {
        Explaining explaining = new Explaining(words);
        List<Problem> problems = kept.sheet().problems();
        List<AnswerView> answers = new ArrayList<>();
        for (int i = 0; i < Math.min(problems.size(), work.answers().size()); i++) {
            answers.add(explaining.explain(problems.get(i), work.answers().get(i)));
        }
        return new ResultView(
                kept.sheet().id(),
                kept.sheet().title(),
                work.pupilId().flatMap(book.pupils()::find).map(Pupil::name),
                days.say(work.handedAt(), words.language()),
                work.right(),
                answers);
    }
}
