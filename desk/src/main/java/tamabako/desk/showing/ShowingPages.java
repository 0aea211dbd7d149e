package tamabako.desk.showing;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongSupplier;
import java.util.stream.Stream;
import tamabako.desk.sheet.Form;
import tamabako.desk.web.Access;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.problems.Column;
import tamabako.problems.marking.Mark;
import tamabako.problems.marking.Marker;
import tamabako.problems.marking.WritingRules;
import tamabako.problems.marking.Written;
import tamabako.problems.words.ProblemWords;
import tamabako.records.ClassBook;
import tamabako.records.Preferences;
import tamabako.records.Pupil;

/// The pages of showings.
public final class ShowingPages implements Routes {

    static final String CAUTION = "showing.caution-read";
    private static final int LATEST = 30;
    private static final int USUAL_WIDTH = 160;
    private static final int USUAL_DISTANCE = 200;

    /// Seeds are short enough for an address that is read aloud.
    private static final int SEEDS = 1_000_000_000;

    private final ClassBook book;
    private final LongSupplier chance;

    /// @param chance the source of seeds
    public ShowingPages(ClassBook book, LongSupplier chance) {
        this.book = book;
        this.chance = chance;
    }

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get("/showing", request -> plan(200, request, Optional.empty()))
                        .forWhom(Access.ASSISTANT),
                Route.post("/showing/caution", this::readCaution).forWhom(Access.ASSISTANT),
                Route.post("/showing/seats", this::keepSeats).forWhom(Access.ASSISTANT),
                Route.get("/showing/stage", this::stage).forWhom(Access.ASSISTANT),
                Route.post("/showing/answer", this::mark).forWhom(Access.ASSISTANT));
    }

    @Override
    public List<String> wordFiles() {
        return List.of("showing");
    }

    private Reply plan(int status, Request request, Optional<String> trouble) {
        ShowingForm form = new ShowingForm(request);
        if (!request.query().isEmpty()) {
            form.read();
        }
        return plan(status, form.form(), seatsForm(request), trouble);
    }

    private Reply plan(int status, Form form, Form seats, Optional<String> trouble) {
        PlanView view =
                new PlanView(
                        form,
                        book.settings().find(CAUTION).isPresent(),
                        Seats.kept(book.settings()),
                        seats,
                        sheets(),
                        book.pupils().all(),
                        trouble);
        return new Reply.Page(status, "showing/plan.jte", Map.of("plan", view));
    }

    private List<PlanView.Listed> sheets() {
        return book.sheets().latest(LATEST).stream()
                .filter(kept -> kept.sheet().problems().stream().anyMatch(Column.class::isInstance))
                .map(kept -> new PlanView.Listed(kept.sheet().id(), kept.sheet().title()))
                .toList();
    }

    private Form seatsForm(Request request) {
        Optional<Seats> kept = Seats.kept(book.settings());
        return new Form(
                request,
                Map.of(
                        "width",
                        Integer.toString(kept.map(Seats::screenWidth).orElse(USUAL_WIDTH)),
                        "nearest",
                        Integer.toString(kept.map(Seats::nearest).orElse(USUAL_DISTANCE))));
    }

    private Reply readCaution(Request request) {
        book.settings().keep(CAUTION, "yes");
        return Reply.seeOther(back(request));
    }

    private Reply keepSeats(Request request) {
        Form form = seatsForm(request);
        int width = form.whole("width", Seats.LEAST_WIDTH, Seats.MOST_WIDTH);
        int nearest = form.whole("nearest", Seats.LEAST_DISTANCE, Seats.MOST_DISTANCE);
        if (!form.isGood()) {
            return plan(400, new ShowingForm(request).form(), form, Optional.empty());
        }
        new Seats(width, nearest).keep(book.settings());
        return Reply.seeOther(back(request));
    }

    /// The plan as it stood when a form beside it was sent.
    private static String back(Request request) {
        String fields = request.form().encode(ShowingForm.NAMES);
        return fields.isEmpty() ? "/showing" : "/showing?" + fields;
    }

    private Reply stage(Request request) {
        Optional<Showing> asked = new ShowingForm(request).read();
        Optional<Seats> seats = Seats.kept(book.settings());
        boolean seatsMissing =
                seats.isEmpty()
                        && asked.map(Showing::place).filter(Place.CLASSROOM::equals).isPresent();
        if (asked.isEmpty() || seatsMissing || book.settings().find(CAUTION).isEmpty()) {
            return plan(asked.isEmpty() ? 400 : 200, request, Optional.empty());
        }
        Showing showing = suited(asked.get(), request.query().text("pupil"));
        if (request.query().text("seed").isEmpty()) {
            return Reply.seeOther(address(request, seed(), 1));
        }
        return switch (ShownProblem.find(book, showing, request.query(), seed(request.query()))) {
            case ShownProblem.Found.Good(ShownProblem problem) ->
                    Reply.page(
                            "showing/stage.jte", Map.of("stage", view(request, showing, problem)));
            case ShownProblem.Found.NoSheet(String id) ->
                    plan(404, request, Optional.of(request.words().say("showing.no-sheet", id)));
            case ShownProblem.Found.NotMade not ->
                    plan(
                            400,
                            request,
                            Optional.of(
                                    ProblemWords.of(request.words().language()).say(not.reason())));
        };
    }

    /// The showing at the pupil's own pace; calm, with no word about it, for one who is not to see
    /// numbers flash.
    private Showing suited(Showing showing, String pupil) {
        Optional<Preferences> preferences = book.pupils().find(pupil).map(Pupil::preferences);
        if (preferences.isEmpty()) {
            return showing;
        }
        Pace own = showing.pace().at(preferences.get().pace());
        return showing.at(preferences.get().noFlashing() ? own.calm() : own);
    }

    private StageView view(Request request, Showing showing, ShownProblem problem) {
        Optional<Seats> seats =
                showing.place() == Place.CLASSROOM ? Seats.kept(book.settings()) : Optional.empty();
        Fields fields = request.query();
        return new StageView(
                showing,
                seats,
                problem,
                problem.number() > 0 ? fields.text("sheet") : "",
                address(request, seed(), problem.number() + 1),
                "/showing?" + fields.encode(ShowingForm.NAMES),
                encoded(fields, seed(fields), Math.max(1, problem.number())));
    }

    private long seed() {
        return Math.floorMod(chance.getAsLong(), SEEDS);
    }

    private static long seed(Fields fields) {
        String written = fields.text("seed");
        return written.matches("\\d{1,9}") ? Long.parseLong(written) : 0;
    }

    private static String address(Request request, long seed, int number) {
        return "/showing/stage?" + encoded(request.query(), seed, number);
    }

    private static String encoded(Fields fields, long seed, int number) {
        Set<String> plain =
                Set.copyOf(ShowingForm.NAMES.stream().filter(n -> !n.equals("number")).toList());
        String others = fields.encode(plain);
        return Stream.of(others, "number=" + number, "seed=" + seed)
                .filter(part -> !part.isEmpty())
                .reduce((a, b) -> a + "&" + b)
                .orElseThrow();
    }

    private Reply mark(Request request) {
        Optional<Showing> asked = new ShowingForm(request).read();
        if (asked.isEmpty()) {
            return Reply.trouble(400, "nowhere");
        }
        Fields fields = request.form();
        return switch (ShownProblem.find(book, asked.get(), fields, seed(fields))) {
            case ShownProblem.Found.Good(ShownProblem problem) ->
                    Reply.json(marked(request, problem).toString());
            case ShownProblem.Found.NoSheet _, ShownProblem.Found.NotMade _ ->
                    Reply.trouble(404, "nowhere");
        };
    }

    private static ObjectNode marked(Request request, ShownProblem problem) {
        String written = request.form().text("answer");
        Mark mark = Marker.mark(problem.column(), written, WritingRules.EASY);
        ObjectNode told = JsonNodeFactory.instance.objectNode();
        told.put("right", mark.isRight());
        told.put("written", !(mark instanceof Mark.Empty));
        told.put("answer", Written.of(problem.column()).in(request.words().language()));
        if (mark instanceof Mark.Unclear unclear) {
            told.put("unclear", ProblemWords.of(request.words().language()).say(unclear));
        }
        return told;
    }
}
