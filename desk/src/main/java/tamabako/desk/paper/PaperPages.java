package tamabako.desk.paper;

import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.stream.Stream;
import tamabako.desk.ladder.KnownLadders;
import tamabako.desk.ladder.KnownLadders.Known;
import tamabako.desk.paper.PapersView.Choice;
import tamabako.desk.paper.PapersView.Entry;
import tamabako.desk.sheet.Form;
import tamabako.desk.web.Access;
import tamabako.desk.web.Days;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.problems.grade.Grade;
import tamabako.problems.setting.FormsMade;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperForms;
import tamabako.problems.setting.PaperId;
import tamabako.problems.setting.PaperMade;
import tamabako.problems.setting.PaperMaker;
import tamabako.problems.setting.SettersCustoms;
import tamabako.problems.words.ProblemWords;
import tamabako.records.ClassBook;
import tamabako.records.Identity;
import tamabako.records.KeptPapers;
import tamabako.records.PaperShelf;

/// The pages "Make a paper" and of papers that were made.
public final class PaperPages implements Routes {

    private static final int LATEST = 12;

    private final PaperShelf shelf;
    private final KnownLadders ladders;
    private final InstantSource clock;
    private final LongSupplier secureBits;
    private final Days days;

    /// @param clock tells when papers were made
    /// @param secureBits where seeds and the names of papers come from; it must not be guessable
    /// @param zone where the days are told
    public PaperPages(ClassBook book, InstantSource clock, LongSupplier secureBits, ZoneId zone) {
        this.shelf = book.papers();
        this.ladders = new KnownLadders(book.ladders());
        this.clock = clock;
        this.secureBits = secureBits;
        this.days = new Days(zone);
    }

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get("/papers", this::choose).forWhom(Access.ASSISTANT),
                Route.post("/papers", this::make).forWhom(Access.ASSISTANT),
                Route.get("/papers/{id}", this::show).forWhom(Access.ASSISTANT),
                Route.get("/papers/{id}.pdf", this::print).forWhom(Access.ASSISTANT),
                Route.get("/papers/{id}/report.pdf", this::printReport).forWhom(Access.ASSISTANT));
    }

    @Override
    public List<String> wordFiles() {
        return List.of("papers");
    }

    private Reply choose(Request request) {
        String sought = request.query().text("find");
        Optional<String> notFound = Optional.empty();
        if (!sought.isEmpty()) {
            switch (PaperId.read(sought)) {
                case PaperId.Read.Known(PaperId id) -> {
                    Optional<String> set = shelf.setOf(id.toString());
                    if (set.isPresent()) {
                        return Reply.seeOther("/papers/" + set.get());
                    }
                    notFound = Optional.of(request.words().say("papers.unknown", id));
                }
                case PaperId.Read.Unknown(PaperId.Reason reason) ->
                        notFound =
                                Optional.of(
                                        ProblemWords.of(request.words().language()).say(reason));
            }
        }
        return page(notFound.isEmpty() ? 200 : 404, request, form(request), notFound);
    }

    private static Form form(Request request) {
        return new Form(request, Map.of("forms", "2", "customs", "kept"));
    }

    /// The ladder that is chosen; the first where none is.
    private Known ladder(Form form) {
        return ladders.find(form.text("ladder")).orElseGet(() -> ladders.all().getFirst());
    }

    private Reply page(int status, Request request, Form form, Optional<String> notFound) {
        Known known = ladder(form);
        PapersView view =
                new PapersView(
                        form,
                        ladders.all().stream().map(one -> choice(one, request)).toList(),
                        choice(known, request),
                        known.ladder().grades().stream()
                                .map(grade -> choice(grade, request))
                                .toList(),
                        request.query().text("find"),
                        notFound,
                        shelf.latest(LATEST).stream().map(kept -> entry(kept, request)).toList());
        return new Reply.Page(status, "paper/papers.jte", Map.of("papers", view));
    }

    private static Choice choice(Known known, Request request) {
        return new Choice(
                known.ladder().id(), known.ladder().name().in(request.words().language()));
    }

    private static Choice choice(Grade grade, Request request) {
        return new Choice(grade.id(), grade.name().in(request.words().language()));
    }

    private Entry entry(KeptPapers.Entry kept, Request request) {
        Optional<Known> known = ladders.find(kept.ladder());
        return new Entry(
                kept.id(),
                known.map(one -> choice(one, request).name()).orElse(kept.ladder()),
                known.flatMap(one -> one.ladder().grade(kept.grade()))
                        .map(grade -> choice(grade, request).name())
                        .orElse(kept.grade()),
                kept.forms(),
                days.say(kept.madeAt(), request.words().language()));
    }

    private Reply make(Request request) {
        Form form = form(request);
        Known known = ladder(form);
        List<String> grades = known.ladder().grades().stream().map(Grade::id).toList();
        String grade = form.word("grade", grades);
        int forms = form.whole("forms", 1, PapersView.MOST_FORMS);
        if (!form.isGood()) {
            return page(400, request, form, Optional.empty());
        }
        PaperMaker maker =
                PaperMaker.of(
                        known.ladder().id(),
                        known.ladder().grade(grade).orElseThrow(),
                        form.isAt("customs", "kept")
                                ? SettersCustoms.KEPT
                                : SettersCustoms.LEFT_OUT);
        List<PaperId> ids = Stream.generate(() -> PaperId.draw(secureBits)).limit(forms).toList();
        return switch (PaperForms.of(maker).make(ids, secureBits.getAsLong(), List.of())) {
            case FormsMade.Found(List<Paper> papers, _, _) -> keep(papers, known);
            case FormsMade.NotMade(PaperMade.Reason reason) -> {
                String said = ProblemWords.of(request.words().language()).say(reason);
                boolean isOfForms = reason instanceof PaperMade.Reason.TooFewForms;
                form.blame(isOfForms ? "forms" : "grade", said);
                yield page(400, request, form, Optional.empty());
            }
        };
    }

    private Reply keep(List<Paper> papers, Known known) {
        String id = Identity.readable();
        shelf.keep(new KeptPapers(id, known.yaml(), clock.instant(), papers));
        return Reply.seeOther("/papers/" + id);
    }

    private Reply show(Request request) {
        Optional<KeptPapers> kept = shelf.find(request.part("id"));
        if (kept.isEmpty()) {
            return missing(request);
        }
        String name =
                kept.get()
                        .ladder()
                        .map(ladder -> ladder.name().in(request.words().language()))
                        .orElse(kept.get().papers().getFirst().ladder());
        FormsView view =
                new FormsViews(request.words())
                        .of(
                                kept.get(),
                                name,
                                days.say(kept.get().madeAt(), request.words().language()));
        return Reply.page("paper/forms.jte", Map.of("forms", view));
    }

    private Reply print(Request request) {
        return shelf.find(request.part("id"))
                .map(kept -> PaperPdf.reply(kept, request))
                .orElseGet(() -> missing(request));
    }

    private Reply printReport(Request request) {
        return shelf.find(request.part("id"))
                .map(kept -> PaperPdf.report(kept, request))
                .orElseGet(() -> missing(request));
    }

    private static Reply missing(Request request) {
        return Reply.trouble(404, "no-paper", request.part("id"));
    }
}
