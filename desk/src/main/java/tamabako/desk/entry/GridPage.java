package tamabako.desk.entry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.entry.EntrySheets.Entered;
import tamabako.desk.sheet.Shown;
import tamabako.desk.web.Access;
import tamabako.desk.web.Days;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.problems.Problem;
import tamabako.problems.marking.WritingRules;
import tamabako.problems.setting.PaperSection;
import tamabako.records.ClassBook;
import tamabako.records.Draft;
import tamabako.records.Group;
import tamabako.records.Pupil;
import tamabako.records.Work;

/// The page with one line a pupil.
record GridPage(ClassBook book, EntrySheets sheets, Days days) implements Routes {

    @Override
    public List<Route> routes() {
        return List.of(Route.get("/entry/{sheet}", request -> show(request, 200, Optional.empty())).forWhom(Access.ASSISTANT));
    }

    /// What was typed for one pupil and cannot be kept.
    record Refused(String pupil, Typed typed, String fault) {}

    /// The grid, in which the line that was refused stands as it was typed.
    Reply show(Request request, int status, Optional<Refused> refused) {
        Fields asked = refused.isPresent() ? request.form() : request.query();
        Optional<Entered> entered = sheets.find(request.part("sheet"), request.words());
        if (entered.isEmpty()) {
            return Reply.trouble(404, "no-sheet", request.part("sheet"));
        }
        Optional<Group> group = book.groups().find(asked.text("group"));
        if (group.isEmpty()) {
            return new Reply.Page(
                    asked.text("group").isEmpty() ? 200 : 404,
                    "entry/group.jte",
                    Map.of("sheet", entered.get().sheet(), "groups", book.groups().all()));
        }
        GridView view = view(request, asked, entered.get(), group.get(), refused);
        return new Reply.Page(status, "entry/grid.jte", Map.of("grid", view));
    }

    private GridView view(
            Request request,
            Fields asked,
            Entered entered,
            Group group,
            Optional<Refused> refused) {
        List<Problem> problems = entered.sheet().problems();
        String id = entered.sheet().id();
        Map<String, Work> last = new HashMap<>();
        book.work().ofSheet(id).forEach(work -> work.pupilId().ifPresent(p -> last.put(p, work)));
        Map<String, Draft> drafts = new HashMap<>();
        book.drafts().ofSheet(id).forEach(draft -> drafts.put(draft.pupilId(), draft));
        Lines lines = new Lines(problems, asked, request.words(), days);
        List<GridView.Line> all =
                book.pupils().in(group.id()).stream()
                        .map(pupil -> line(lines, pupil, last, drafts, refused))
                        .toList();
        return new GridView(
                id,
                entered.sheet().title(),
                !entered.sections().isEmpty(),
                problems.stream().anyMatch(problem -> problem.answer().value().signum() < 0),
                Typed.rules(asked).equals(WritingRules.STRICT),
                group,
                parts(entered, request),
                all,
                handed(id, group, request));
    }

    private String handed(String sheet, Group group, Request request) {
        return book.handouts().ofSheet(sheet).reversed().stream()
                .filter(handout -> handout.groupId().equals(group.id()))
                .filter(handout -> handout.pupilId().isEmpty())
                .findFirst()
                .map(handout -> days.say(handout.at(), request.words().language()))
                .orElse("");
    }

    private static GridView.Line line(
            Lines lines,
            Pupil pupil,
            Map<String, Work> last,
            Map<String, Draft> drafts,
            Optional<Refused> refused) {
        return lines.line(
                pupil,
                Optional.ofNullable(last.get(pupil.id())),
                Optional.ofNullable(drafts.get(pupil.id())),
                refused.filter(one -> one.pupil().equals(pupil.id())));
    }

    private static List<GridView.Part> parts(Entered entered, Request request) {
        if (entered.sections().isEmpty()) {
            return List.of(part("", 0, entered.sheet().problems()));
        }
        List<GridView.Part> parts = new ArrayList<>();
        int from = 0;
        for (PaperSection section : entered.sections()) {
            String name = section.section().name().in(request.words().language());
            parts.add(part(name, from, section.problems()));
            from += section.problems().size();
        }
        return parts;
    }

    private static GridView.Part part(String name, int from, List<Problem> problems) {
        return new GridView.Part(
                name,
                from,
                problems.stream().map(Problem::id).toList(),
                problems.stream().map(Shown::line).toList());
    }
}
