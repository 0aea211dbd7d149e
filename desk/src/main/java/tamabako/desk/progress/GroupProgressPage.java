package tamabako.desk.progress;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import tamabako.desk.book.Missing;
import tamabako.desk.web.Access;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.insight.mastery.MasteryWords;
import tamabako.insight.mastery.MoveMastery;
import tamabako.insight.mastery.Statement;
import tamabako.insight.readiness.ForecastsHeld;
import tamabako.insight.readiness.Readiness;
import tamabako.insight.slip.SlipKind;
import tamabako.insight.slip.SlipWords;
import tamabako.records.ClassBook;
import tamabako.records.Group;

/// The page of a group's progress: who is ready, who is stuck, which slips are common.
record GroupProgressPage(ClassBook book, Progress progress, NextOnLadder next, PastExams exams)
        implements Routes {

    /// From this chance on, in hundredths as they are shown, a pupil is ready for an exam.
    static final long READY = 80;

    /// From this chance on a pupil is nearly ready.
    static final long NEAR = 50;

    /// So many slips of a kind a pupil must have made to be named beside it.
    private static final double MADE = 1;

    private static final int MOST = 6;

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get(
                                "/book/groups/{id}/progress",
                                request ->
                                        Missing.orGroup(
                                                book, request, group -> page(request, group)))
                        .forWhom(Access.ASSISTANT));
    }

    private Reply page(Request request, Group group) {
        Locale language = request.words().language();
        List<Judged> pupils = progress.ofGroup(group.id());
        ForecastsHeld held = exams.held(group.demo());
        GroupProgressView view =
                new GroupProgressView(
                        group,
                        next.ladder().name().in(language),
                        pupils.stream().map(one -> line(one, language)).toList(),
                        slips(pupils, SlipWords.of(language)),
                        HeldPart.of(held, language));
        return Reply.page("progress/group.jte", Map.of("page", view));
    }

    private GroupProgressView.Line line(Judged pupil, Locale language) {
        Optional<Readiness> grade = next.of(pupil);
        List<String> weak =
                pupil.mastery().stream()
                        .flatMap(mastery -> mastery.moves().stream())
                        .filter(move -> move.statement() == Statement.NOT_YET)
                        .sorted(Comparator.comparingDouble(MoveMastery::good))
                        .map(move -> MasteryWords.of(language).name(move.move()))
                        .toList();
        return new GroupProgressView.Line(
                pupil.gathered().pupil().id(),
                pupil.gathered().pupil().name(),
                state(pupil, grade, weak),
                pupil.answers(),
                Decimals.hundredths((double) pupil.right() / Math.max(1, pupil.answers())),
                grade.map(one -> one.grade().name().in(language)).orElse(""),
                grade.flatMap(Readiness::pass).map(ReadinessPart.Band::of),
                grade.map(Readiness::more).orElse(0),
                mainSlip(pupil, SlipWords.of(language)),
                weak);
    }

    private static String mainSlip(Judged pupil, SlipWords words) {
        return pupil.slips().main().standsOut()
                ? words.name(pupil.slips().main().likeliest().getFirst().kind())
                : "";
    }

    private static String state(Judged pupil, Optional<Readiness> grade, List<String> weak) {
        OptionalLong chance = chance(grade);
        if (chance.orElse(0) >= READY) {
            return "ready";
        }
        if (!weak.isEmpty()
                && Headway.of(pupil.gathered().days()).filter(Headway::still).isPresent()) {
            return "stuck";
        }
        return chance.isEmpty() ? "unknown" : chance.getAsLong() >= NEAR ? "near" : "on-the-way";
    }

    /// The chance to pass that grade, in hundredths as it is shown.
    static OptionalLong chance(Optional<Readiness> grade) {
        return grade.flatMap(Readiness::pass)
                .map(pass -> OptionalLong.of(Decimals.chance(pass.likely())))
                .orElse(OptionalLong.empty());
    }

    private static List<GroupProgressView.CommonSlip> slips(List<Judged> pupils, SlipWords words) {
        record Made(SlipKind kind, double slips, List<String> pupils) {}
        List<Made> made = new ArrayList<>();
        for (SlipKind kind : SlipKind.values()) {
            double slips = 0;
            List<String> who = new ArrayList<>();
            for (Judged pupil : pupils) {
                double own = pupil.slips().sum().slips().of(kind);
                slips += own;
                if (own >= MADE) {
                    who.add(pupil.gathered().pupil().name());
                }
            }
            if (kind != SlipKind.NONE_KNOWN && !who.isEmpty()) {
                made.add(new Made(kind, slips, who));
            }
        }
        made.sort(Comparator.comparingDouble(Made::slips).reversed());
        double most = made.isEmpty() ? 1 : made.getFirst().slips();
        return made.stream()
                .limit(MOST)
                .map(one ->
                        new GroupProgressView.CommonSlip(
                                words.name(one.kind()),
                                Decimals.tenths(one.slips()),
                                one.pupils(),
                                Decimals.hundredths(one.slips() / most)))
                .toList();
    }
}
