package tamabako.desk.sheet;

import java.time.InstantSource;
import java.util.List;
import java.util.Set;
import tamabako.desk.web.Access;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.Templates;

/// Keeps a wish under a name, and takes it away again. A template opens by its own address: it is a
/// wish in the address, without its seed.
public final class TemplatePages implements Routes {

    private static final int LONGEST_NAME = 60;
    private static final int LONGEST_FIELDS = 2_000;

    /// What is asked for, and not from what chance.
    private static final Set<String> FIELDS =
            Set.of(
                    "by",
                    "kind",
                    "rows",
                    "least",
                    "most",
                    "ji",
                    "minus",
                    "places",
                    "below",
                    "technique",
                    "practise",
                    "learning",
                    "run",
                    "fewest",
                    "strokes",
                    "answer",
                    "customs",
                    "multiplicand",
                    "multiplier",
                    "divisor",
                    "quotient",
                    "degree",
                    "digits",
                    "ladder",
                    "grade",
                    "section",
                    "count",
                    "title");

    private final Templates templates;
    private final InstantSource clock;

    /// @param clock tells when a template was kept
    public TemplatePages(Templates templates, InstantSource clock) {
        this.templates = templates;
        this.clock = clock;
    }

    @Override
    public List<Route> routes() {
        return List.of(
                Route.post("/templates", this::keep).forWhom(Access.ASSISTANT),
                Route.post("/templates/{id}/remove", this::remove));
    }

    private Reply keep(Request request) {
        String name = request.form().text("template").replaceAll("\\p{Cntrl}", " ").strip();
        if (name.isEmpty()) {
            return Reply.trouble(400, "template-name");
        }
        if (name.length() > LONGEST_NAME) {
            return Reply.trouble(400, "template-long", LONGEST_NAME);
        }
        String fields = request.form().encode(FIELDS);
        if (fields.length() > LONGEST_FIELDS) {
            return Reply.trouble(400, "template-fields");
        }
        templates.keep(name, fields, clock.instant());
        return Reply.seeOther("/make?" + fields);
    }

    private Reply remove(Request request) {
        templates.remove(request.part("id"));
        return Reply.seeOther("/make");
    }
}
