package tamabako.desk.progress;

import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import tamabako.desk.book.Missing;
import tamabako.desk.web.Access;
import tamabako.desk.web.Days;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.desk.web.Words;
import tamabako.insight.mastery.MoveMastery;
import tamabako.insight.mastery.Statement;
import tamabako.insight.readiness.Readiness;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Pupil;

/// The report for a family, to be printed: plain words, praise where it is due, and no shame.
record ReportPage(
        ClassBook book, Progress progress, NextOnLadder next, InstantSource clock, ZoneId zone)
        implements Routes {

    /// With fewer answers nothing is said but how many there are.
    private static final int ENOUGH = 30;

    private static final int MOST_PRAISED = 4;
    private static final int MOST_PRACTISED = 2;

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get(
                                "/book/pupils/{id}/report",
                                request ->
                                        Missing.orPupil(
                                                book, request, pupil -> page(request, pupil)))
                        .forWhom(Access.ASSISTANT));
    }

    private Reply page(Request request, Pupil pupil) {
        Words words = request.words();
        Judged judged = progress.of(pupil);
        boolean enough = judged.answers() >= ENOUGH;
        ReportView view =
                new ReportView(
                        pupil,
                        book.groups().find(pupil.groupId()).map(Group::name).orElse(""),
                        day(clock.instant(), words),
                        opening(judged, words),
                        enough ? well(judged, words) : List.of(),
                        enough ? practising(judged, words) : List.of(),
                        enough ? next(judged, words) : List.of(),
                        words.count("family.basis", judged.answers()));
        return Reply.page("progress/report.jte", Map.of("page", view));
    }

    private String day(Instant moment, Words words) {
        return new Days(zone).say(moment, words.language());
    }

    private static String opening(Judged judged, Words words) {
        String name = judged.gathered().pupil().name();
        if (judged.answers() == 0) {
            return words.say("family.nothing", name);
        }
        return words.say(
                judged.answers() < ENOUGH ? "family.opening-early" : "family.opening",
                name,
                Days.say(judged.gathered().days().getFirst().day(), words.language()),
                judged.answers(),
                judged.gathered().days().size());
    }

    private static List<String> well(Judged judged, Words words) {
        List<String> well = new ArrayList<>();
        Headway.of(judged.gathered().days())
                .filter(Headway::better)
                .ifPresent(headway ->
                        well.add(
                                words.say(
                                        "family.better",
                                        Math.round(10 * headway.lately()),
                                        Math.round(10 * headway.before()))));
        kinds(judged, words).forEach(well::add);
        moves(judged, Statement.MASTERED).stream()
                .sorted(Comparator.comparingDouble(MoveMastery::good).reversed())
                .limit(MOST_PRAISED)
                .map(move -> words.say("family.move." + move.move().word()))
                .forEach(well::add);
        skills(judged, Statement.MASTERED, words).forEach(well::add);
        if (well.isEmpty()) {
            well.add(words.say("family.keeps-at-it"));
        }
        return well;
    }

    private static List<String> kinds(Judged judged, Words words) {
        return judged.mastery().stream()
                .flatMap(mastery -> mastery.kinds().stream())
                .filter(kind -> kind.statement() == Statement.MASTERED)
                .map(kind -> words.say("family.kind." + kind.kind()))
                .distinct()
                .toList();
    }

    private static List<MoveMastery> moves(Judged judged, Statement statement) {
        return judged.mastery().stream()
                .flatMap(mastery -> mastery.moves().stream())
                .filter(move -> move.statement() == statement)
                .toList();
    }

    private static Stream<String> skills(Judged judged, Statement statement, Words words) {
        return judged.mastery().stream()
                .flatMap(mastery -> mastery.skills().stream())
                .filter(skill -> skill.statement() == statement)
                .map(skill -> words.say("family.skill." + skill.skill().word()));
    }

    private static List<String> practising(Judged judged, Words words) {
        List<String> practising =
                new ArrayList<>(
                        moves(judged, Statement.NOT_YET).stream()
                                .sorted(Comparator.comparingDouble(MoveMastery::good))
                                .limit(MOST_PRACTISED)
                                .map(move -> words.say("family.move." + move.move().word()))
                                .toList());
        skills(judged, Statement.NOT_YET, words).forEach(practising::add);
        if (practising.isEmpty()) {
            practising.add(words.say("family.practise-all"));
        }
        return practising;
    }

    private List<String> next(Judged judged, Words words) {
        Optional<Readiness> grade = next.of(judged);
        OptionalLong chance = GroupProgressPage.chance(grade);
        if (grade.isEmpty() || chance.isEmpty()) {
            return List.of();
        }
        String key =
                chance.getAsLong() >= GroupProgressPage.READY
                        ? "family.ready"
                        : chance.getAsLong() >= GroupProgressPage.NEAR
                                ? "family.near"
                                : "family.on-the-way";
        return List.of(words.say(key, grade.get().grade().name().in(words.language())));
    }
}
