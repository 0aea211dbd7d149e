package tamabako.desk.roster;

import java.time.InstantSource;
import java.time.Year;
import java.time.ZoneId;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.desk.web.Upload;
import tamabako.records.ClassBook;
import tamabako.records.roster.Importing;
import tamabako.records.roster.Plan;
import tamabako.records.roster.Read;
import tamabako.records.roster.RosterFile;
import tamabako.records.roster.RosterOut;
import tamabako.records.roster.RosterWords;
import tamabako.records.roster.Told;
import tamabako.records.roster.Wishes;

/// Rosters in, with a look at what would happen, and lists out.
public final class RosterPages implements Routes {

    /// A little more than the longest roster, for what a form adds to it.
    private static final int MEGABYTES = RosterFile.MOST_MEGABYTES + 1;

    private final ClassBook book;
    private final InstantSource clock;
    private final ZoneId zone;

    /// @param clock tells which year it is
    /// @param zone where
    public RosterPages(ClassBook book, InstantSource clock, ZoneId zone) {
        this.book = book;
        this.clock = clock;
        this.zone = zone;
    }

    @Override
    public List<Route> routes() {
        return List.of(
                Route.upload("/book/keeping/roster", MEGABYTES, this::look),
                // Carried in letters, a file is a third longer.
                Route.upload("/book/keeping/roster/write", 2 * MEGABYTES, this::write),
                Route.get(
                        "/book/keeping/pupils.csv", request -> pupils(request, RosterOut.Form.CSV)),
                Route.get(
                        "/book/keeping/pupils.xlsx",
                        request -> pupils(request, RosterOut.Form.XLSX)),
                Route.get(
                        "/book/keeping/results.csv",
                        request -> results(request, RosterOut.Form.CSV)),
                Route.get(
                        "/book/keeping/results.xlsx",
                        request -> results(request, RosterOut.Form.XLSX)));
    }

    @Override
    public List<String> wordFiles() {
        return List.of("keeping");
    }

    private Reply look(Request request) {
        Optional<Upload> file = request.form().file("file");
        if (file.isEmpty()) {
            return Reply.seeOther("/book/keeping?fault=no-roster");
        }
        String group = request.form().text("group");
        return switch (RosterFile.read(file.get().bytes())) {
            case Read.Unreadable(Told why) -> unread(file.get().name(), why, request);
            case Read.Roster roster -> {
                Plan plan = Importing.plan(book, roster, wishes(group, request));
                yield show(new Carried(file.get(), group), roster, plan, false, request);
            }
        };
    }

    private Reply write(Request request) {
        Optional<Upload> file = carried(request);
        if (file.isEmpty()
                || !(RosterFile.read(file.get().bytes()) instanceof Read.Roster roster)) {
            return Reply.trouble(400, "form-broken");
        }
        String group = request.form().text("group");
        Importing.Written written =
                Importing.write(book, roster, wishes(group, request), request.form().text("seen"));
        return switch (written) {
            case Importing.Written.Done(Plan plan) ->
                    Reply.seeOther(
                            "/book/keeping?done=roster&added=%d&changed=%d&moved=%d&same=%d&wrong=%d"
                                    .formatted(
                                            plan.added().size(),
                                            plan.changed().size(),
                                            plan.moved().size(),
                                            plan.same().size(),
                                            plan.wrong().size()));
            case Importing.Written.Outdated(Plan plan) ->
                    show(new Carried(file.get(), group), roster, plan, true, request);
        };
    }

    private static Optional<Upload> carried(Request request) {
        try {
            byte[] bytes = Base64.getDecoder().decode(request.form().text("roster"));
            return Optional.of(new Upload(request.form().text("name"), bytes));
        } catch (IllegalArgumentException broken) {
            return Optional.empty();
        }
    }

    /// What the page carries from one step to the next.
    record Carried(Upload file, String group) {}

    private Wishes wishes(String group, Request request) {
        Year year = Year.from(clock.instant().atZone(zone));
        return new Wishes(group, request.words().language(), year);
    }

    private Reply show(
            Carried carried, Read.Roster roster, Plan plan, boolean outdated, Request request) {
        RosterWords words = RosterWords.of(request.words().language());
        PlanView view = PlanView.of(carried, roster.kind(), plan, outdated, words);
        return Reply.page("roster/plan.jte", Map.of("plan", view));
    }

    private static Reply unread(String name, Told why, Request request) {
        String said = RosterWords.of(request.words().language()).say(why);
        return new Reply.Page(400, "roster/unread.jte", Map.of("name", name, "why", said));
    }

    private Reply pupils(Request request, RosterOut.Form form) {
        return list("pupils", form, RosterOut.pupils(book, form, request.words().language()));
    }

    private Reply results(Request request, RosterOut.Form form) {
        return list("results", form, RosterOut.results(book, form, request.words().language()));
    }

    private static Reply list(String name, RosterOut.Form form, byte[] bytes) {
        String type =
                switch (form) {
                    case CSV -> "text/csv; charset=utf-8";
                    case XLSX ->
                            "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
                };
        String file = name + "." + form.name().toLowerCase(Locale.ROOT);
        return new Reply.Bytes(
                200,
                type,
                Map.of("Content-Disposition", "attachment; filename=\"" + file + "\""),
                bytes);
    }
}
