package tamabako.desk.entry;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.desk.web.Access;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.problems.Problem;
import tamabako.problems.Sheet;
import tamabako.problems.marking.WritingRules;
import tamabako.records.ClassBook;
import tamabako.records.Draft;
import tamabako.records.Pupil;
import tamabako.records.Work;
import tamabako.records.Work.MarkedAnswer;

/// Keeps the line of one pupil: as a draft while it is typed, and then as work.
record LineKeeping(ClassBook book, EntrySheets sheets, GridPage grid, InstantSource clock)
        implements Routes {

    private static final String IDENTITY = "[2-9A-Z]{26}";

    @Override
    public List<Route> routes() {
        return List.of(
                Route.post("/entry/{sheet}/{pupil}", request -> with(request, this::keep)).forWhom(Access.ASSISTANT),
                Route.post(
                        "/entry/{sheet}/{pupil}/draft", request -> with(request, this::keepDraft)).forWhom(Access.ASSISTANT));
    }

    /// Answers for one sheet and one pupil.
    private interface Answer {
        Reply of(Request request, Sheet sheet, Pupil pupil);
    }

    private Reply with(Request request, Answer answer) {
        Optional<Pupil> pupil = book.pupils().find(request.part("pupil"));
        if (pupil.isEmpty()) {
            return Reply.trouble(404, "no-pupil");
        }
        Optional<Sheet> sheet = sheets.forWork(request.part("sheet"), request.words());
        return sheet.isPresent()
                ? answer.of(request, sheet.get(), pupil.get())
                : Reply.trouble(404, "no-sheet", request.part("sheet"));
    }

    /// Marks what was typed so far, and keeps it so that nothing is lost.
    private Reply keepDraft(Request request, Sheet sheet, Pupil pupil) {
        Typed typed = Typed.read(request.form(), sheet.problems().size());
        if (typed.isEmpty()) {
            book.drafts().forget(sheet.id(), pupil.id());
        } else if (!typed.isTooLong()) {
            book.drafts()
                    .keep(new Draft(sheet.id(), pupil.id(), typed.written(), typed.took()));
        }
        return Reply.json(marks(typed, sheet.problems(), request).toString());
    }

    private static ObjectNode marks(Typed typed, List<Problem> problems, Request request) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        ArrayNode marks = node.putArray("marks");
        List<String> all = typed.marks(problems);
        all.forEach(marks::add);
        long right = all.stream().filter("right"::equals).count();
        node.put("score", request.words().say("mark.score", right, problems.size()));
        node.put("fault", timeFault(typed, request));
        node.put("refused", typed.fault(request.words()).orElse(""));
        return node;
    }

    private static String timeFault(Typed typed, Request request) {
        return Clocked.read(typed.took()) instanceof Clocked.Read.Unclear
                ? request.words().say("entry.time-unclear", typed.took())
                : "";
    }

    /// Keeps the line as the pupil's work, or puts it in the place of the work that it corrects.
    private Reply keep(Request request, Sheet sheet, Pupil pupil) {
        Typed typed = Typed.read(request.form(), sheet.problems().size());
        Optional<String> fault = typed.fault(request.words());
        if (fault.isPresent()) {
            GridPage.Refused refused = new GridPage.Refused(pupil.id(), typed, fault.get());
            return grid.show(request, 400, Optional.of(refused));
        }
        String id = request.form().text("work");
        Optional<Work> before = book.work().find(id);
        boolean isOwn =
                before.filter(work ->
                                work.sheetId().equals(sheet.id())
                                        && work.pupilId().equals(Optional.of(pupil.id())))
                        .isPresent();
        if (before.isPresent() ? !isOwn : !id.matches(IDENTITY)) {
            return Reply.trouble(400, "entry-work");
        }
        List<Optional<Duration>> times =
                before.map(work -> work.answers().stream().map(MarkedAnswer::took).toList())
                        .orElse(List.of());
        Work work =
                new Work(
                        id,
                        sheet.id(),
                        Optional.of(pupil.id()),
                        clock.instant(),
                        marked(typed, sheet.problems(), times),
                        typed.time());
        book.whole(() -> {
            if (before.isPresent()) {
                book.work().correct(work);
            } else {
                book.work().keep(work);
            }
            book.drafts().forget(sheet.id(), pupil.id());
        });
        String rules = typed.rules().equals(WritingRules.STRICT) ? "&rules=strict" : "";
        return Reply.seeOther(
                "/entry/%s?group=%s%s#line-%s"
                        .formatted(sheet.id(), pupil.groupId(), rules, pupil.id()));
    }

    /// The answers with their marks; the time of each answer stays, where it was taken.
    private static List<MarkedAnswer> marked(
            Typed typed, List<Problem> problems, List<Optional<Duration>> times) {
        List<String> marks = typed.marks(problems);
        List<MarkedAnswer> answers = new ArrayList<>();
        for (int i = 0; i < problems.size(); i++) {
            Optional<Duration> time = i < times.size() ? times.get(i) : Optional.empty();
            answers.add(new MarkedAnswer(typed.written().get(i), marks.get(i), time));
        }
        return answers;
    }
}
