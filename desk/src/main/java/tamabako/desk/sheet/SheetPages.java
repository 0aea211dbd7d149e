package tamabako.desk.sheet;

import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongSupplier;
import tamabako.desk.web.Days;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.problems.Sheet;
import tamabako.records.ClassBook;
import tamabako.records.Identity;
import tamabako.records.KeptSheet;

/// The pages "Make a sheet" and of one sheet.
public final class SheetPages implements Routes {

    /// Seeds are short enough to be read out.
    private static final long MOST_SEED = 999_999;

    private final ClassBook book;
    private final InstantSource clock;
    private final LongSupplier seeds;
    private final Days days;

    /// @param clock tells when a sheet was kept
    /// @param seeds where fresh seeds come from
    /// @param zone where the days are told
    public SheetPages(ClassBook book, InstantSource clock, LongSupplier seeds, ZoneId zone) {
        this.book = book;
        this.clock = clock;
        this.seeds = seeds;
        this.days = new Days(zone);
    }

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get("/make", this::make),
                Route.post("/sheets", this::keep),
                Route.get("/sheets/{id}", this::show),
                Route.get("/sheets/{id}.pdf", this::print));
    }

    private Reply make(Request request) {
        WishForm asked = new WishForm(request);
        long seed = seed(request.query());
        Granting granting = Granting.of(asked, seed, request.words());
        return page(asked.form().isGood() ? 200 : 400, request, asked, seed, granting);
    }

    private static Reply page(
            int status, Request request, WishForm asked, long seed, Granting granting) {
        MakeView view =
                new MakeView(
                        asked.form(),
                        seed,
                        Shown.all(granting.problems(), request.words().language()),
                        granting.nearest().map(wish -> WishAddress.of(wish, asked, seed)));
        return new Reply.Page(status, "sheet/make.jte", Map.of("make", view));
    }

    private Reply keep(Request request) {
        WishForm asked = new WishForm(request);
        long seed = seed(request.form());
        Granting granting = Granting.of(asked, seed, request.words());
        if (granting.problems().isEmpty()) {
            return page(400, request, asked, seed, granting);
        }
        String title = asked.title(request.words());
        Sheet sheet = new Sheet(Identity.readable(), title, granting.problems());
        book.sheets().keep(new KeptSheet(sheet, clock.instant(), false));
        return Reply.seeOther("/sheets/" + sheet.id());
    }

    private Reply show(Request request) {
        Optional<KeptSheet> kept = book.sheets().find(request.part("id"));
        if (kept.isEmpty()) {
            return Reply.trouble(404, "no-sheet", request.part("id"));
        }
        Locale language = request.words().language();
        String day = days.say(kept.get().keptAt(), language);
        return Reply.page(
                "sheet/sheet.jte",
                Map.of(
                        "kept",
                        kept.get(),
                        "day",
                        day,
                        "problems",
                        Shown.all(kept.get().sheet().problems(), language)));
    }

    private Reply print(Request request) {
        Optional<KeptSheet> kept = book.sheets().find(request.part("id"));
        return kept.isEmpty()
                ? Reply.trouble(404, "no-sheet", request.part("id"))
                : SheetPdf.reply(kept.get().sheet(), request);
    }

    private long seed(Fields fields) {
        String written = fields.text("seed");
        boolean asked = written.matches("\\d{1,6}") && !fields.has("other");
        return asked ? Long.parseLong(written) : Math.floorMod(seeds.getAsLong(), MOST_SEED) + 1;
    }
}
