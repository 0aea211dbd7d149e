package tamabako.desk.ladder;

import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.ladder.KnownLadders.Known;
import tamabako.desk.ladder.OwnLadderView.MistakeView;
import tamabako.desk.web.Access;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.file.LadderFile;
import tamabako.problems.grade.file.Ladders;
import tamabako.problems.grade.file.Mistake;
import tamabako.problems.words.ProblemWords;
import tamabako.records.OwnLadder;
import tamabako.records.OwnLadders;

/// The pages of the ladders.
public final class LadderPages implements Routes {

    private final OwnLadders own;
    private final KnownLadders known;
    private final InstantSource clock;

    /// @param own where the teacher's own ladders are kept
    /// @param clock tells when one was kept
    public LadderPages(OwnLadders own, InstantSource clock) {
        this.own = own;
        this.known = new KnownLadders(own);
        this.clock = clock;
    }

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get("/ladders", this::all).forWhom(Access.ASSISTANT),
                Route.get("/ladders/{id}", this::show).forWhom(Access.ASSISTANT),
                Route.get("/ladders/{id}.yaml", this::file).forWhom(Access.ASSISTANT),
                Route.post("/ladders/{id}/remove", this::remove),
                Route.get("/own-ladder", this::write),
                Route.post("/own-ladder", this::keep));
    }

    @Override
    public List<String> wordFiles() {
        return List.of("ladders");
    }

    private Reply all(Request request) {
        LadderViews views = new LadderViews(request.words());
        List<LadderView> ladders = known.all().stream().map(views::of).toList();
        return Reply.page("ladder/all.jte", Map.of("ladders", ladders));
    }

    private Reply show(Request request) {
        Optional<Known> found = known.find(request.part("id"));
        if (found.isPresent()) {
            LadderView view = new LadderViews(request.words()).of(found.get());
            return Reply.page("ladder/ladder.jte", Map.of("ladder", view));
        }
        return own.find(request.part("id"))
                .map(kept -> check(kept.yaml(), request))
                .orElseGet(() -> missing(request));
    }

    private static Reply missing(Request request) {
        return Reply.trouble(404, "no-ladder", request.part("id"));
    }

    private Reply file(Request request) {
        Optional<Known> found = known.find(request.part("id"));
        if (found.isEmpty()) {
            return missing(request);
        }
        String name = found.get().ladder().id() + ".yaml";
        return new Reply.Bytes(
                200,
                "text/plain; charset=utf-8",
                Map.of("Content-Disposition", "attachment; filename=\"" + name + "\""),
                found.get().yaml().getBytes(StandardCharsets.UTF_8));
    }

    private Reply remove(Request request) {
        own.remove(request.part("id"));
        return Reply.seeOther("/ladders");
    }

    private Reply write(Request request) {
        String yaml = known.find(request.query().text("from")).map(Known::yaml).orElse("");
        return Reply.page("ladder/own.jte", Map.of("own", new OwnLadderView(yaml, List.of())));
    }

    private Reply keep(Request request) {
        String yaml = request.form().find("yaml").orElse("").replace("\r\n", "\n");
        if (!(read(yaml, request) instanceof LadderFile.Read(Ladder ladder))) {
            return check(yaml, request);
        }
        if (Ladders.ladder(ladder.id()).isPresent()) {
            String message = request.words().say("own-ladder.taken", ladder.id());
            return mistaken(yaml, List.of(MistakeView.of(nameLine(yaml), yaml, message)));
        }
        own.keep(new OwnLadder(ladder.id(), yaml, clock.instant()));
        return Reply.seeOther("/ladders/" + ladder.id());
    }

    private static Reply check(String yaml, Request request) {
        List<Mistake> mistakes =
                read(yaml, request) instanceof LadderFile.Mistaken(List<Mistake> found)
                        ? found
                        : List.of();
        ProblemWords words = ProblemWords.of(request.words().language());
        return mistaken(
                yaml,
                mistakes.stream()
                        .map(one -> MistakeView.of(one.line(), yaml, words.say(one.fault())))
                        .toList());
    }

    private static Reply mistaken(String yaml, List<MistakeView> mistakes) {
        return new Reply.Page(
                400, "ladder/own.jte", Map.of("own", new OwnLadderView(yaml, mistakes)));
    }

    private static LadderFile read(String yaml, Request request) {
        return LadderFile.read(request.words().say("own-ladder.file"), yaml);
    }

    /// The line on which the ladder is named.
    private static int nameLine(String yaml) {
        List<String> lines = yaml.lines().toList();
        return 1
                + lines.indexOf(
                        lines.stream()
                                .filter(line -> line.startsWith("ladder:"))
                                .findFirst()
                                .orElse(""));
    }
}
