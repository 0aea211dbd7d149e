package tamabako.desk.progress;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import tamabako.desk.ladder.KnownLadders;
import tamabako.insight.readiness.ForecastsHeld;
import tamabako.insight.readiness.Outlines;
import tamabako.insight.readiness.PastForecast;
import tamabako.insight.readiness.Recalibration;
import tamabako.insight.readiness.Variety;
import tamabako.problems.grade.ExamOutcome;
import tamabako.problems.setting.Paper;
import tamabako.records.ClassBook;
import tamabako.records.KeptOutcome;
import tamabako.records.Pupil;
import tamabako.records.Work;

/// Exams of the past, and what was to be foretold of them on the day before: those that were
/// written down, and whole papers that were worked at this desk under their clock.
///
/// What was foretold of a pupil's exams is remembered until the pupil's work or exams change.
final class PastExams {

    private final ClassBook book;
    private final Progress progress;
    private final Outlines outlines;
    private final KnownLadders ladders;
    private final ZoneId zone;
    private final Map<String, Known> known = new ConcurrentHashMap<>();
    private final Map<Boolean, Recalibration> corrections = new ConcurrentHashMap<>();

    PastExams(ClassBook book, Progress progress, Outlines outlines, ZoneId zone) {
        this.book = book;
        this.progress = progress;
        this.outlines = outlines;
        this.ladders = new KnownLadders(book.ladders());
        this.zone = zone;
    }

    /// An exam of the past.
    ///
    /// @param atDesk whether it was a paper that was worked at this desk
    /// @param foretold what was told of it and what came; empty where nothing was to be told
    record Exam(ExamOutcome outcome, boolean atDesk, Optional<Recalibration.Outcome> foretold) {}

    /// The exams of a pupil, and what they were worked out from.
    private record Known(List<Work> works, List<KeptOutcome> kept, List<Exam> exams) {}

    /// The exams of a pupil, the newest first.
    List<Exam> of(Pupil pupil) {
        Gathered gathered = progress.gather(pupil);
        List<KeptOutcome> kept = book.exams().of(pupil.id());
        Known before = known.get(pupil.id());
        if (before != null
                && before.works().equals(gathered.works())
                && before.kept().equals(kept)) {
            return before.exams();
        }
        List<Exam> exams = new ArrayList<>();
        kept.forEach(one -> exams.add(exam(gathered, one.outcome(), false)));
        for (Work work : gathered.works()) {
            LocalDate day = work.handedAt().atZone(zone).toLocalDate();
            paper(work.sheetId())
                    .flatMap(paper -> SatPaper.outcome(paper, work, day))
                    .ifPresent(outcome -> exams.add(exam(gathered, outcome, true)));
        }
        exams.sort(Comparator.comparing((Exam exam) -> exam.outcome().day()).reversed());
        known.put(pupil.id(), new Known(gathered.works(), kept, List.copyOf(exams)));
        return exams;
    }

    private Optional<Paper> paper(String sheetId) {
        return book.papers()
                .setOf(sheetId)
                .flatMap(book.papers()::find)
                .flatMap(kept ->
                        kept.papers().stream().filter(one -> one.id().equals(sheetId)).findFirst());
    }

    private Exam exam(Gathered gathered, ExamOutcome outcome, boolean atDesk) {
        return new Exam(
                outcome,
                atDesk,
                ladders.find(outcome.ladder())
                        .flatMap(found -> found.ladder().grade(outcome.grade()))
                        .flatMap(grade -> outlines.of(outcome.ladder(), grade))
                        .flatMap(outline ->
                                PastForecast.of(
                                        gathered.worked(), Variety.USUAL, outline, outcome)));
    }

    /// How well forecasts held, of all pupils of the book together. The demo class is told of by
    /// itself, so that simulated exams say nothing of real pupils.
    ///
    /// @param demo whether it is of the demo class
    ForecastsHeld held(boolean demo) {
        Set<String> pupils = new LinkedHashSet<>(book.exams().pupils());
        pupils.addAll(book.work().pupilsOfPapers());
        List<Recalibration.Outcome> outcomes = new ArrayList<>();
        for (String id : pupils) {
            book.pupils()
                    .find(id)
                    .filter(pupil -> pupil.demo() == demo)
                    .ifPresent(pupil ->
                            of(pupil).forEach(exam -> exam.foretold().ifPresent(outcomes::add)));
        }
        ForecastsHeld held = new ForecastsHeld(outcomes);
        corrections.put(demo, held.correction());
        return held;
    }

    /// The correction by what came of exams when it was last looked at.
    Recalibration correction(boolean demo) {
        Recalibration last = corrections.get(demo);
        return last == null ? held(demo).correction() : last;
    }

    /// Forgets a pupil.
    void erase(String pupilId) {
        known.remove(pupilId);
        corrections.clear();
    }
}
