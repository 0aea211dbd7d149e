package tamabako.desk.mark;

import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.sheet.Shown;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.problems.Problem;
import tamabako.problems.marking.Marker;
import tamabako.records.ClassBook;
import tamabako.records.KeptSheet;
import tamabako.records.Pupil;
import tamabako.records.Work;
import tamabako.records.Work.MarkedAnswer;

/// The page on which the answers to one sheet are typed or pasted.
///
/// @param clock tells when work was handed in
record AnswersPage(ClassBook book, InstantSource clock) {

    /// The empty form for the answers to one sheet.
    Reply ask(Request request) {
        return book.sheets()
                .find(request.part("id"))
                .map(kept -> {
                    int problems = kept.sheet().problems().size();
                    return form(200, kept, Handed.blank(problems, request.query()));
                })
                .orElseGet(() -> noSheet(request));
    }

    private Reply form(int status, KeptSheet kept, Handed handed) {
        List<Problem> problems = kept.sheet().problems();
        boolean below = problems.stream().anyMatch(p -> p.answer().value().signum() < 0);
        Map<String, Object> model = new HashMap<>();
        model.put(
                "form",
                new FormView(
                        kept.sheet().id(),
                        kept.sheet().title(),
                        problems.stream().map(Shown::line).toList(),
                        handed.written(),
                        handed.pasted(),
                        handed.rules().commas(),
                        below,
                        handed.fault()));
        model.put("pupils", book.pupils().all());
        model.put("chosen", handed.pupil());
        return new Reply.Page(status, "mark/form.jte", model);
    }

    /// Marks the answers of a form and keeps them, or shows the form again with what is wrong.
    Reply take(Request request) {
        Optional<KeptSheet> kept = book.sheets().find(request.part("id"));
        if (kept.isEmpty()) {
            return noSheet(request);
        }
        List<Problem> problems = kept.get().sheet().problems();
        Handed handed = Handed.read(request.form(), problems.size(), request.words());
        if (handed.fault().isPresent()) {
            return form(400, kept.get(), handed);
        }
        Optional<String> pupil = book.pupils().find(handed.pupil()).map(Pupil::id);
        if (pupil.isEmpty() && !handed.pupil().isEmpty()) {
            return Reply.trouble(404, "no-pupil");
        }
        List<MarkedAnswer> marked = marked(problems, handed);
        Work work = Work.of(kept.get().sheet().id(), pupil, clock.instant(), marked);
        book.work().keep(work);
        return Reply.seeOther("/marked/" + work.id());
    }

    private static List<MarkedAnswer> marked(List<Problem> problems, Handed handed) {
        List<MarkedAnswer> marked = new ArrayList<>();
        for (int i = 0; i < problems.size(); i++) {
            String written = handed.written().get(i);
            String mark = Explaining.word(Marker.mark(problems.get(i), written, handed.rules()));
            marked.add(new MarkedAnswer(written, mark));
        }
        return marked;
    }

    private static Reply noSheet(Request request) {
        return Reply.trouble(404, "no-sheet", request.part("id"));
    }
}
