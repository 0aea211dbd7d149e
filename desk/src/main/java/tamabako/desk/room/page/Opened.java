package tamabako.desk.room.page;

import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import tamabako.desk.call.CallPlan;
import tamabako.desk.room.Activity;
import tamabako.desk.room.Calling;
import tamabako.desk.room.Contest;
import tamabako.desk.room.Expected;
import tamabako.desk.room.Round;
import tamabako.desk.room.Setup;
import tamabako.desk.showing.Seats;
import tamabako.desk.showing.ShowingPlan;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Words;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.Problem;
import tamabako.problems.Sheet;
import tamabako.problems.marking.WritingRules;
import tamabako.problems.setting.Paper;
import tamabako.records.ClassBook;
import tamabako.records.Identity;
import tamabako.records.KeptSheet;
import tamabako.records.Pupil;

/// Reads the form that opens a room.
final class Opened {

    private static final int MOST_MINUTES = 180;

    private static final int USUAL_SEATS = 60;

    /// The source that is a call, followed by its plan as it stands in an address.
    static final String CALL = "call:";

    /// The source that is a showing, followed in the same way.
    static final String SHOWING = "showing:";

    private static final int MOST_SHOWINGS = 50;

    private static final int USUAL_SHOWINGS = 5;

    private final ClassBook book;

    Opened(ClassBook book) {
        this.book = book;
    }

    /// What came of reading.
    sealed interface Read {
        /// The room can be opened.
        record Good(Setup setup) implements Read {}

        /// It cannot; the key of the text that says why.
        record Bad(String fault) implements Read {}
    }

    Read read(Fields form, Words words) {
        String minutes = form.text("minutes");
        String most = form.text("most");
        if (!minutes.isEmpty() && !isWithin(minutes, MOST_MINUTES)) {
            return new Read.Bad("room.open.minutes-wrong");
        }
        if (!most.isEmpty() && !isWithin(most, Setup.MOST_SEATS)) {
            return new Read.Bad("room.open.most-wrong");
        }
        if (!form.text("showings").isEmpty() && !isWithin(form.text("showings"), MOST_SHOWINGS)) {
            return new Read.Bad("room.open.showings-wrong");
        }
        if (form.text("source").startsWith(SHOWING)) {
            Optional<String> missing = missing(form);
            if (missing.isPresent()) {
                return new Read.Bad(missing.get());
            }
        }
        Optional<Duration> limit =
                minutes.isEmpty()
                        ? Optional.empty()
                        : Optional.of(Duration.ofMinutes(Integer.parseInt(minutes)));
        List<Expected> pupils = pupils(form);
        boolean aliases = form.has("aliases") || pupils.isEmpty();
        String source = form.text("source");
        return rounds(form, source, limit, words)
                .<Read>map(rounds ->
                        new Read.Good(
                                new Setup(
                                        title(form, rounds),
                                        rounds,
                                        pupils,
                                        aliases,
                                        form.text("view").equals("one"),
                                        most.isEmpty() ? USUAL_SEATS : Integer.parseInt(most))))
                .orElseGet(() -> new Read.Bad("room.open.no-source"));
    }

    private static boolean isWithin(String typed, int most) {
        return typed.matches("\\d{1,5}")
                && Integer.parseInt(typed) >= 1
                && Integer.parseInt(typed) <= most;
    }

    private static String title(Fields form, List<Round> rounds) {
        String typed = form.text("title");
        String title = typed.isEmpty() ? rounds.getFirst().title() : typed;
        return title.length() > 60 ? title.substring(0, 60) : title;
    }

    private List<Expected> pupils(Fields form) {
        List<Pupil> pupils =
                form.text("group").isEmpty()
                        ? List.of()
                        : book.pupils().in(form.text("group")).stream()
                                .sorted(Pupil.BY_NAME)
                                .toList();
        Map<String, String> pins =
                form.has("pins")
                        ? book.pins().of(pupils.stream().map(Pupil::id).toList())
                        : Map.of();
        return pupils.stream()
                .map(pupil ->
                        new Expected(
                                pupil.id(),
                                pupil.name(),
                                pupil.language().getLanguage(),
                                pupil.preferences().extraTime(),
                                pins.getOrDefault(pupil.id(), ""),
                                pupil.preferences().noFlashing()))
                .toList();
    }

    private Optional<List<Round>> rounds(
            Fields form, String source, Optional<Duration> limit, Words words) {
        String[] parts = source.split(":", -1);
        if (parts.length == 2 && parts[0].equals("sheet")) {
            WritingRules rules = form.has("commas") ? WritingRules.STRICT : WritingRules.EASY;
            return book.sheets()
                    .find(parts[1])
                    .filter(kept -> !kept.sheet().problems().isEmpty())
                    .map(kept -> List.of(round(kept.sheet(), rules, limit)));
        }
        if (parts.length == 3 && parts[0].equals("paper")) {
            boolean whole = form.text("sections").equals("whole");
            return book.papers()
                    .find(parts[1])
                    .flatMap(kept ->
                            kept.papers().stream()
                                    .filter(paper -> parts[2].equals("" + paper.form()))
                                    .findFirst())
                    .map(paper ->
                            whole ? whole(paper, limit, words) : sections(paper, limit, words));
        }
        if (source.startsWith(CALL)) {
            return plan(source.substring(CALL.length()))
                    .flatMap(plan -> CallPlan.read(book, plan, words))
                    .map(plan -> List.of(called(plan, words)));
        }
        if (source.startsWith(SHOWING)) {
            String typed = form.text("showings");
            int count = typed.isEmpty() ? USUAL_SHOWINGS : Integer.parseInt(typed);
            return plan(source.substring(SHOWING.length()))
                    .flatMap(plan -> ShowingPlan.read(book, plan, count, words))
                    .map(plan -> List.of(shown(plan, screen(form), words)));
        }
        return Optional.empty();
    }

    private static Activity.Screen screen(Fields form) {
        return form.text("screen").equals("board")
                ? Activity.Screen.BOARD
                : Activity.Screen.TABLETS;
    }

    /// What has to be told before anything is shown: that the caution was read, and for a projector
    /// how near the nearest seat is.
    private Optional<String> missing(Fields form) {
        if (!ShowingPlan.isCautionRead(book)) {
            return Optional.of("room.open.no-caution");
        }
        boolean isBlind =
                screen(form) == Activity.Screen.BOARD && Seats.kept(book.settings()).isEmpty();
        return isBlind ? Optional.of("room.open.no-seats") : Optional.empty();
    }

    private Round shown(ShowingPlan plan, Activity.Screen screen, Words words) {
        List<Column> columns = renamed(plan.columns(), Mode.MENTAL);
        String title = words.say("room.shown.title");
        return new Round(
                title,
                keep(title, List.copyOf(columns)).id(),
                new Activity.Shown(columns, plan.pace(), plan.look(), plan.anySize(), screen),
                Optional.empty());
    }

    /// The fields of a plan, as they stand in the address of its page.
    private static Optional<Fields> plan(String encoded) {
        return Fields.parse(encoded) instanceof Fields.Read.Good(Fields plan)
                ? Optional.of(plan)
                : Optional.empty();
    }

    private Round called(CallPlan plan, Words words) {
        List<Column> columns = renamed(plan.columns(), Mode.CALLED);
        String title = words.say("room.called.title");
        Calling calling =
                new Calling(plan.language(), plan.wish(), plan.paces(), Contest.of(plan.round()));
        return new Round(
                title,
                keep(title, List.copyOf(columns)).id(),
                new Activity.Called(columns, calling),
                Optional.empty());
    }

    /// The same columns under numbers from 1, worked in that way.
    private static List<Column> renamed(List<Column> columns, Mode mode) {
        return IntStream.range(0, columns.size())
                .mapToObj(i ->
                        new Column(
                                String.valueOf(i + 1),
                                columns.get(i).rows(),
                                columns.get(i).terms().withMode(mode)))
                .toList();
    }

    private static Round round(Sheet sheet, WritingRules rules, Optional<Duration> limit) {
        return new Round(
                sheet.title(), sheet.id(), new Activity.Written(sheet.problems(), rules), limit);
    }

    private List<Round> whole(Paper paper, Optional<Duration> limit, Words words) {
        String title = paper.grade().name().in(words.language());
        Sheet sheet = keep(title, paper.problems());
        return List.of(round(sheet, paper.grade().writing(), limit.or(() -> paper.grade().time())));
    }

    private List<Round> sections(Paper paper, Optional<Duration> limit, Words words) {
        List<Round> rounds = new ArrayList<>();
        for (var section : paper.sections()) {
            String title =
                    words.say(
                            "room.open.section",
                            paper.grade().name().in(words.language()),
                            section.section().name().in(words.language()));
            Sheet sheet = keep(title, section.problems());
            rounds.add(
                    round(
                            sheet,
                            paper.grade().writing(),
                            limit.or(() -> section.section().time())));
        }
        return List.copyOf(rounds);
    }

    /// Work belongs to a sheet; the problems of a paper are kept as one.
    private Sheet keep(String title, List<Problem> problems) {
        Sheet sheet = new Sheet(Identity.readable(), title, problems);
        book.sheets().keep(new KeptSheet(sheet, Clock.systemUTC().instant(), false));
        return sheet;
    }
}
