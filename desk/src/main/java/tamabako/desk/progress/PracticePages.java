package tamabako.desk.progress;

import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import tamabako.desk.book.Missing;
import tamabako.desk.progress.Planning.Planned;
import tamabako.desk.sheet.Form;
import tamabako.desk.sheet.SheetPdf;
import tamabako.desk.sheet.Shown;
import tamabako.desk.web.Access;
import tamabako.desk.web.Days;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.desk.web.Words;
import tamabako.insight.plan.PlanWords;
import tamabako.problems.Sheet;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Handout;
import tamabako.records.Identity;
import tamabako.records.KeptSheet;
import tamabako.records.Pupil;

/// The next practice of a pupil, and of a whole group at once, each with a sheet of their own and
/// the reason in words. What is kept is handed out to its pupil.
record PracticePages(
        ClassBook book,
        Progress progress,
        Planning planning,
        InstantSource clock,
        ZoneId zone,
        LongSupplier seeds)
        implements Routes {

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get("/book/pupils/{id}/practice", request -> pupil(request, this::show))
                        .forWhom(Access.ASSISTANT),
                Route.post("/book/pupils/{id}/practice", request -> pupil(request, this::keep))
                        .forWhom(Access.ASSISTANT),
                Route.get("/book/groups/{id}/practice", request -> group(request, this::show))
                        .forWhom(Access.ASSISTANT),
                Route.post("/book/groups/{id}/practice", request -> group(request, this::keep))
                        .forWhom(Access.ASSISTANT),
                Route.get("/book/groups/{id}/practice.pdf", request -> group(request, this::print))
                        .forWhom(Access.ASSISTANT));
    }

    private interface ForPupil {
        Reply of(Request request, Pupil pupil);
    }

    private interface ForGroup {
        Reply of(Request request, Group group);
    }

    private Reply pupil(Request request, ForPupil answer) {
        return Missing.orPupil(book, request, pupil -> answer.of(request, pupil));
    }

    private Reply group(Request request, ForGroup answer) {
        return Missing.orGroup(book, request, group -> answer.of(request, group));
    }

    private Reply show(Request request, Pupil pupil) {
        PracticeForm asked = PracticeForm.of(request, seeds);
        return page(request, pupil, asked, planning.plan(progress.of(pupil), asked.asked()));
    }

    private Reply page(
            Request request, Pupil pupil, PracticeForm asked, Optional<Planned> planned) {
        Locale language = request.words().language();
        PracticeView view =
                new PracticeView(
                        pupil,
                        book.groups().find(pupil.groupId()).map(Group::name).orElse(""),
                        asked.form(),
                        asked.asked().seed(),
                        grade(planned, language),
                        reasons(planned, language),
                        planned.map(one -> reviews(one, request.words())).orElse(""),
                        planned.map(one -> Shown.all(one.practice().problems(), language))
                                .orElse(List.of()));
        return new Reply.Page(
                asked.form().isGood() ? 200 : 400, "progress/practice.jte", Map.of("page", view));
    }

    private Reply keep(Request request, Pupil pupil) {
        PracticeForm asked = PracticeForm.of(request, seeds);
        Optional<Planned> planned = planning.plan(progress.of(pupil), asked.asked());
        if (!asked.form().isGood() || planned.isEmpty()) {
            return page(request, pupil, asked, planned);
        }
        Sheet sheet = keep(pupil, planned.get(), request.words());
        return Reply.seeOther("/sheets/" + sheet.id());
    }

    private Sheet keep(Pupil pupil, Planned planned, Words words) {
        Instant now = clock.instant();
        String day = new Days(zone).say(now, words.language());
        Sheet sheet =
                new Sheet(
                        Identity.readable(),
                        words.say("practice.sheet", pupil.name(), day),
                        planned.practice().problems());
        book.whole(() -> {
            book.sheets().keep(new KeptSheet(sheet, now, pupil.demo()));
            book.handouts().keep(Handout.of(sheet.id(), pupil, now));
        });
        return sheet;
    }

    private Reply show(Request request, Group group) {
        PracticeForm asked = PracticeForm.of(request, seeds);
        return page(request, group, asked);
    }

    private Reply page(Request request, Group group, PracticeForm asked) {
        Locale language = request.words().language();
        List<GroupPracticeView.Plan> plans = new ArrayList<>();
        for (Judged pupil : progress.ofGroup(group.id())) {
            Optional<Planned> planned = planning.plan(pupil, asked.asked());
            plans.add(
                    new GroupPracticeView.Plan(
                            pupil.gathered().pupil().id(),
                            pupil.gathered().pupil().name(),
                            grade(planned, language),
                            reasons(planned, language)));
        }
        GroupPracticeView view =
                new GroupPracticeView(
                        group,
                        asked.form(),
                        asked.asked().seed(),
                        plans,
                        made(request.query().text("made")).stream()
                                .map(sheet ->
                                        new GroupPracticeView.MadeSheet(sheet.id(), sheet.title()))
                                .toList());
        return new Reply.Page(
                asked.form().isGood() ? 200 : 400,
                "progress/practice-group.jte",
                Map.of("page", view));
    }

    private Reply keep(Request request, Group group) {
        PracticeForm asked = PracticeForm.of(request, seeds);
        Form form = asked.form();
        if (!form.isGood()) {
            return page(request, group, asked);
        }
        List<Sheet> sheets = new ArrayList<>();
        for (Judged pupil : progress.ofGroup(group.id())) {
            planning.plan(pupil, asked.asked())
                    .ifPresent(planned ->
                            sheets.add(keep(pupil.gathered().pupil(), planned, request.words())));
        }
        String made = sheets.stream().map(Sheet::id).collect(Collectors.joining("."));
        return Reply.seeOther("/book/groups/" + group.id() + "/practice?made=" + made);
    }

    /// All sheets in one file, or all their keys.
    private Reply print(Request request, Group group) {
        List<Sheet> sheets = made(request.query().text("sheets"));
        return sheets.isEmpty()
                ? Reply.trouble(404, "no-sheet", request.query().text("sheets"))
                : SheetPdf.reply(sheets, request);
    }

    private List<Sheet> made(String numbers) {
        return Arrays.stream(numbers.split("\\.", -1))
                .filter(number -> number.matches("[A-Z0-9-]{1,20}"))
                .map(number -> book.sheets().find(number))
                .flatMap(Optional::stream)
                .map(KeptSheet::sheet)
                .toList();
    }

    private static String grade(Optional<Planned> planned, Locale language) {
        return planned.map(one -> one.readiness().grade().name().in(language)).orElse("");
    }

    private static List<String> reasons(Optional<Planned> planned, Locale language) {
        return planned.map(
                        one -> PlanWords.of(language).say(one.practice(), one.readiness().grade()))
                .orElse(List.of());
    }

    private static String reviews(Planned planned, Words words) {
        List<Integer> days = planned.practice().reviews();
        return days.isEmpty()
                ? ""
                : words.say(
                        "practice.reviews",
                        days.stream().map(String::valueOf).collect(Collectors.joining(", ")));
    }
}
