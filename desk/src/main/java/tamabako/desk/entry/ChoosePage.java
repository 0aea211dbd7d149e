package tamabako.desk.entry;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.web.Days;
import tamabako.desk.web.Access;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.ClassBook;
import tamabako.records.KeptSheet;

/// The page on which the sheet is chosen whose answers are typed.
record ChoosePage(ClassBook book, EntrySheets sheets, Days days) implements Routes {

    private static final int LATEST = 20;

    @Override
    public List<Route> routes() {
        return List.of(Route.get("/entry", this::choose).forWhom(Access.ASSISTANT));
    }

    private Reply choose(Request request) {
        String number = request.query().text("number");
        Optional<String> found = sheets.identity(number);
        if (found.isPresent()) {
            String group = URLEncoder.encode(request.query().text("group"), StandardCharsets.UTF_8);
            return Reply.seeOther(
                    "/entry/" + found.get() + (group.isEmpty() ? "" : "?group=" + group));
        }
        ChooseView view =
                new ChooseView(
                        number,
                        !number.isEmpty(),
                        book.sheets().latest(LATEST).stream()
                                .map(kept -> entry(kept, request))
                                .toList(),
                        book.groups().all());
        return new Reply.Page(
                number.isEmpty() ? 200 : 404, "entry/choose.jte", Map.of("choose", view));
    }

    private ChooseView.Entry entry(KeptSheet kept, Request request) {
        return new ChooseView.Entry(
                kept.sheet().id(),
                kept.sheet().title(),
                kept.sheet().problems().size(),
                days.say(kept.keptAt(), request.words().language()),
                kept.demo());
    }
}
