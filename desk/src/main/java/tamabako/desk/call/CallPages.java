package tamabako.desk.call;

import java.util.List;
import java.util.Map;
import java.util.function.LongSupplier;
import tamabako.desk.web.Access;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.problems.Column;
import tamabako.records.ClassBook;
import tamabako.records.KeptSheet;

/// The pages of calling: the plan, the caller's page, and the sound of each call.
public final class CallPages implements Routes {

    private static final int MOST_SHEETS = 40;
    private static final long MOST_SEED = 999_999;

    private final ClassBook book;
    private final LongSupplier seeds;

    /// @param seeds where fresh seeds come from
    public CallPages(ClassBook book, LongSupplier seeds) {
        this.book = book;
        this.seeds = seeds;
    }

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get("/call", this::plan).forWhom(Access.ASSISTANT),
                Route.get("/call/stage", this::stage).forWhom(Access.ASSISTANT),
                Route.get("/call/sound", this::sound).forWhom(Access.ASSISTANT));
    }

    @Override
    public List<String> wordFiles() {
        return List.of("calls");
    }

    private Reply plan(Request request) {
        return plan(200, new CallForm(request));
    }

    private Reply plan(int status, CallForm asked) {
        List<KeptSheet> sheets =
                book.sheets().latest(MOST_SHEETS).stream()
                        .filter(kept ->
                                kept.sheet().problems().stream().anyMatch(Column.class::isInstance))
                        .toList();
        return new Reply.Page(
                status, "call/plan.jte", Map.of("plan", new PlanView(asked.form(), sheets)));
    }

    private Reply stage(Request request) {
        Fields query = request.query();
        if (!query.text("seed").matches("\\d{1,6}")) {
            long seed = Math.floorMod(seeds.getAsLong(), MOST_SEED) + 1;
            String asked = query.encode(CallForm.NAMES);
            String before = asked.isEmpty() ? "" : asked + "&";
            return Reply.seeOther("/call/stage?" + before + "seed=" + seed);
        }
        CallForm asked = new CallForm(request);
        List<PlannedCall> calls = new Planning(book, asked, request.words()).calls(seed(query));
        if (!asked.form().isGood()) {
            return plan(400, asked);
        }
        String encoded = query.encode(CallForm.NAMES);
        String json =
                new CallJson(request.words(), "/call/sound?" + encoded + "&n=")
                        .of(calls, asked.round(), 0);
        return Reply.page(
                "call/stage.jte",
                Map.of("stage", new StageView(asked.form(), json, "/call?" + encoded, encoded)));
    }

    private static long seed(Fields query) {
        String written = query.text("seed");
        return written.matches("\\d{1,6}") ? Long.parseLong(written) : 1;
    }

    private Reply sound(Request request) {
        Fields query = request.query();
        CallForm asked = new CallForm(request);
        List<PlannedCall> calls = new Planning(book, asked, request.words()).calls(seed(query));
        String number = query.text("n");
        int n = number.matches("\\d{1,3}") ? Integer.parseInt(number) : 0;
        if (n < 1 || n > calls.size()) {
            return Reply.trouble(404, "nowhere");
        }
        return SoundReply.of(calls.get(n - 1), query.has("save"));
    }
}
