package tamabako.desk.home;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.home.HomeView.GroupCard;
import tamabako.desk.home.HomeView.PupilEntry;
import tamabako.desk.home.HomeView.SheetEntry;
import tamabako.desk.home.HomeView.WorkEntry;
import tamabako.desk.web.Access;
import tamabako.desk.web.Days;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.KeptSheet;
import tamabako.records.Pupil;
import tamabako.records.Work;

/// The desk's first page.
public final class HomePage implements Routes {

    private static final int LATEST = 8;

    private final ClassBook book;
    private final Days days;

    /// @param zone where the days are told
    public HomePage(ClassBook book, ZoneId zone) {
        this.book = book;
        this.days = new Days(zone);
    }

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get("/", this::show).forWhom(Access.ASSISTANT),
                Route.post("/demo/remove", this::removeDemo));
    }

    private Reply show(Request request) {
        List<Pupil> pupils = book.pupils().all();
        List<GroupCard> groups = book.groups().all().stream().map(g -> card(g, pupils)).toList();
        List<SheetEntry> sheets =
                book.sheets().latest(LATEST).stream().map(s -> entry(s, request)).toList();
        List<WorkEntry> work =
                book.work().latest(LATEST).stream().map(w -> entry(w, request)).toList();
        return Reply.page("home/page.jte", Map.of("home", new HomeView(groups, sheets, work)));
    }

    private Reply removeDemo(Request request) {
        book.removeDemo();
        return Reply.seeOther("/");
    }

    private static GroupCard card(Group group, List<Pupil> pupils) {
        List<PupilEntry> members =
                pupils.stream()
                        .filter(pupil -> pupil.groupId().equals(group.id()))
                        .map(pupil -> new PupilEntry(pupil.id(), pupil.name()))
                        .toList();
        return new GroupCard(group.id(), group.name(), group.demo(), members);
    }

    private SheetEntry entry(KeptSheet kept, Request request) {
        return new SheetEntry(
                kept.sheet().id(),
                kept.sheet().title(),
                kept.sheet().problems().size(),
                day(kept.keptAt(), request),
                kept.demo());
    }

    private WorkEntry entry(Work work, Request request) {
        Optional<String> pupil = work.pupilId().flatMap(book.pupils()::find).map(Pupil::name);
        String title =
                book.sheets().find(work.sheetId()).map(kept -> kept.sheet().title()).orElse("");
        return new WorkEntry(
                work.id(),
                pupil,
                title,
                work.right(),
                work.answers().size(),
                day(work.handedAt(), request));
    }

    private String day(Instant moment, Request request) {
        return days.say(moment, request.words().language());
    }
}
