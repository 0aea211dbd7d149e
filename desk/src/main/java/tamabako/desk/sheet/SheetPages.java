package tamabako.desk.sheet;

import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongSupplier;
import tamabako.desk.ladder.KnownLadders;
import tamabako.desk.web.Access;
import tamabako.desk.web.Days;
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

    private final ClassBook book;
    private final InstantSource clock;
    private final LongSupplier seeds;
    private final Days days;
    private final KnownLadders ladders;

    /// @param clock tells when a sheet was kept
    /// @param seeds where fresh seeds come from
    /// @param zone where the days are told
    public SheetPages(ClassBook book, InstantSource clock, LongSupplier seeds, ZoneId zone) {
        this.book = book;
        this.clock = clock;
        this.seeds = seeds;
        this.days = new Days(zone);
        this.ladders = new KnownLadders(book.ladders());
    }

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get("/make", this::make).forWhom(Access.ASSISTANT),
                Route.post("/sheets", this::keep).forWhom(Access.ASSISTANT),
                Route.get("/sheets/{id}", this::show).forWhom(Access.ASSISTANT),
                Route.get("/sheets/{id}.pdf", this::print).forWhom(Access.ASSISTANT));
    }

    private Reply make(Request request) {
        WishForm asked = new WishForm(request, ladders);
        Drawn drawn = Drawn.of(request.query(), seeds);
        Granting granting = Granting.of(asked, drawn, request.words());
        return page(request, asked, drawn, granting);
    }

    private Reply page(Request request, WishForm asked, Drawn drawn, Granting granting) {
        MakeView view =
                new MakeView(
                        asked.form(),
                        asked.by(),
                        drawn.seed(),
                        drawn.swaps().toString(),
                        Practised.all(granting.problems(), request.words().language()),
                        granting.nearest().map(wish -> WishAddress.of(wish, asked, drawn.seed())),
                        SectionsView.of(asked.section(), request.words()),
                        book.templates().all());
        int status = asked.form().isGood() ? 200 : 400;
        return new Reply.Page(status, "sheet/make.jte", Map.of("make", view));
    }

    private Reply keep(Request request) {
        WishForm asked = new WishForm(request, ladders);
        Drawn drawn = Drawn.of(request.form(), seeds);
        Granting granting = Granting.of(asked, drawn, request.words());
        if (!asked.form().isGood()) {
            return page(request, asked, drawn, granting);
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
                        Shown.all(kept.get().sheet().problems(), language),
                        "handing",
                        Handing.of(book, kept.get().sheet().id(), days, language)));
    }

    private Reply print(Request request) {
        Optional<KeptSheet> kept = book.sheets().find(request.part("id"));
        return kept.isEmpty()
                ? Reply.trouble(404, "no-sheet", request.part("id"))
                : SheetPdf.reply(kept.get().sheet(), request);
    }
}
