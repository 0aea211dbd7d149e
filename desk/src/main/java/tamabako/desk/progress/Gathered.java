package tamabako.desk.progress;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import tamabako.insight.mastery.MasteryAnswer;
import tamabako.insight.mastery.MasteryTally;
import tamabako.insight.pace.PaceAnswer;
import tamabako.insight.pace.PaceTally;
import tamabako.insight.plan.Load;
import tamabako.insight.plan.Practised;
import tamabako.insight.pooling.Manner;
import tamabako.insight.pooling.PupilAnswer;
import tamabako.insight.pooling.PupilTally;
import tamabako.insight.readiness.Worked;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.EventTables;
import tamabako.problems.Attempt;
import tamabako.problems.Problem;
import tamabako.problems.Sheet;
import tamabako.problems.Unreadable;
import tamabako.records.Pupil;
import tamabako.records.Work;

/// The work of one pupil, gathered for the judgements.
///
/// @param pupil whose work it is
/// @param works what was handed in, the oldest first
/// @param attempts the answers whose problems are still in the book, the oldest first
/// @param worked what each of them that was written says for forecasts
/// @param days right and wrong answers by day
/// @param practised what all of them have taught
/// @param manners what was worked on the frame, and what in the head
record Gathered(
        Pupil pupil,
        List<Work> works,
        List<Attempt> attempts,
        List<Worked> worked,
        List<Day> days,
        Practised practised,
        Map<Manner, OfManner> manners) {

    /// The answers that were worked in one manner.
    record OfManner(MasteryTally mastery, PaceTally pace, PupilTally slips) {

        static OfManner empty(Manner manner) {
            return new OfManner(new MasteryTally(manner), new PaceTally(), new PupilTally());
        }
    }

    /// The answers of one day.
    record Day(LocalDate day, int answers, int right) {

        private Day with(boolean wasRight) {
            return new Day(day, answers + 1, wasRight ? right + 1 : right);
        }
    }

    /// Gathers the work of `pupil`.
    ///
    /// @param sheet the sheet of an identity, where it is still in the book
    /// @param zone where the lessons are held
    static Gathered of(
            Pupil pupil,
            List<Work> works,
            Function<String, Optional<Sheet>> sheet,
            EventTables tables,
            ZoneId zone) {
        List<Attempt> attempts = new ArrayList<>();
        List<Worked> worked = new ArrayList<>();
        Map<LocalDate, Day> days = new TreeMap<>();
        Practised practised = new Practised();
        Map<Manner, OfManner> manners = new EnumMap<>(Manner.class);
        for (Work work : works) {
            LocalDate day = work.handedAt().atZone(zone).toLocalDate();
            List<Problem> problems =
                    sheet.apply(work.sheetId()).map(Sheet::problems).orElse(List.of());
            for (int i = 0; i < Math.min(problems.size(), work.answers().size()); i++) {
                Work.MarkedAnswer answer = work.answers().get(i);
                Attempt attempt = attempt(pupil, problems.get(i), answer, work, zone);
                attempts.add(attempt);
                Worked.of(attempt, tables).ifPresent(worked::add);
                days.merge(
                        day,
                        new Day(day, 0, 0).with(answer.right()),
                        (before, _) -> before.with(answer.right()));
                Manner manner = Manner.of(attempt.problem());
                OfManner tallies = manners.computeIfAbsent(manner, OfManner::empty);
                EventTable table = tables.of(attempt.problem());
                add(tallies, table, attempt, manner);
                practised.add(Load.of(List.of(table), 1));
            }
        }
        return new Gathered(
                pupil,
                List.copyOf(works),
                List.copyOf(attempts),
                List.copyOf(worked),
                List.copyOf(days.values()),
                practised,
                manners);
    }

    private static Attempt attempt(
            Pupil pupil, Problem problem, Work.MarkedAnswer answer, Work work, ZoneId zone) {
        return new Attempt(
                problem,
                answer.written(),
                answer.took()
                        .map(took -> OptionalDouble.of(took.toMillis() / 1000.0))
                        .orElse(OptionalDouble.empty()),
                Optional.of(pupil.id()),
                Optional.of(work.handedAt().atZone(zone).toOffsetDateTime()),
                List.of());
    }

    private static void add(OfManner tallies, EventTable table, Attempt attempt, Manner manner) {
        MasteryAnswer.of(table, attempt)
                .ifPresentOrElse(tallies.mastery()::add, tallies.mastery()::addNotRead);
        PupilAnswer.of(table, attempt.answer(), manner.shipped())
                .ifPresentOrElse(tallies.slips()::add, tallies.slips()::addNotRead);
        try {
            PaceAnswer.of(attempt).ifPresent(tallies.pace()::add);
        } catch (Unreadable impossible) {
            // A time that no hand can have: the answer counts, its time does not.
        }
    }

    /// What was worked in `manner`; nothing where nothing was.
    OfManner in(Manner manner) {
        return manners.getOrDefault(manner, OfManner.empty(manner));
    }
}
