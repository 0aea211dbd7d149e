package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import tamabako.insight.mastery.Demand;
import tamabako.insight.mastery.MasteryAnswer;
import tamabako.insight.mastery.MasteryPopulation;
import tamabako.insight.mastery.MasteryTally;
import tamabako.insight.mastery.SlipPosterior;
import tamabako.insight.plan.Exercises;
import tamabako.insight.plan.Lacks;
import tamabako.insight.plan.Learning;
import tamabako.insight.plan.Load;
import tamabako.insight.plan.NextPractice;
import tamabako.insight.plan.PlanJson;
import tamabako.insight.plan.PlanWish;
import tamabako.insight.plan.Planner;
import tamabako.insight.plan.Practised;
import tamabako.insight.pooling.Manner;
import tamabako.insight.readiness.Forecast;
import tamabako.insight.readiness.Outline;
import tamabako.insight.readiness.Readiness;
import tamabako.insight.readiness.Standing;
import tamabako.insight.readiness.Variety;
import tamabako.insight.readiness.Worked;
import tamabako.insight.slip.EventTables;
import tamabako.problems.Attempt;
import tamabako.problems.AttemptCheck;
import tamabako.problems.Problem;
import tamabako.problems.Sheet;
import tamabako.problems.grade.Grade;
import tamabako.problems.json.AttemptJson;
import tamabako.records.Identity;

/// `plan`: gathers every pupil's answers and then plans for each pupil in the order of their names.
/// What a pupil has worked already is not asked again.
final class PlansOfPupils implements LineWork.Gathering<PlansOfPupils.Read> {

    /// An answer that was read, and whose it is.
    record Read(
            String pupil,
            Problem problem,
            Load load,
            Manner manner,
            Optional<Worked> worked,
            Optional<MasteryAnswer> answer) {}

    /// What is gathered of one pupil.
    private record Pupil(
            List<Worked> worked,
            MasteryTally frame,
            MasteryTally mind,
            Practised practised,
            Set<Problem> seen) {

        static Pupil empty() {
            return new Pupil(
                    new ArrayList<>(),
                    new MasteryTally(Manner.FRAME),
                    new MasteryTally(Manner.MIND),
                    new Practised(),
                    new HashSet<>());
        }

        void add(Read read) {
            read.worked().ifPresent(worked::add);
            MasteryTally tally = read.manner() == Manner.FRAME ? frame : mind;
            read.answer().ifPresentOrElse(tally::add, tally::addNotRead);
            practised.add(read.load());
            seen.add(read.problem());
        }

        Lacks lacks() {
            return Lacks.of(posterior(frame), posterior(mind), practised, Learning.USUAL);
        }

        private static SlipPosterior posterior(MasteryTally tally) {
            return tally.told(MasteryPopulation.shipped(), Demand.of(tally)).posterior();
        }
    }

    /// What one pupil is to practise.
    private record Planned(String pupil, NextPractice practice) {

        /// A sheet under the pupil's name.
        Sheet sheet() {
            return new Sheet(Identity.readable(), pupil, practice.problems());
        }
    }

    private final EventTables tables = new EventTables();
    private final Map<String, Pupil> pupils = new TreeMap<>();

    private PlansOfPupils() {}

    /// Does it and gives the exit code.
    ///
    /// @throws ParameterException if no papers of the grade can be made
    static int run(
            CommandSpec command,
            BufferedReader in,
            String ladder,
            Grade grade,
            PlanWish wish,
            PlanSheets sheets)
            throws IOException {
        PlansOfPupils gathered = new PlansOfPupils();
        Outline outline =
                Outline.of(ladder, grade, gathered.tables)
                        .orElseThrow(() ->
                                new ParameterException(
                                        command.commandLine(),
                                        "No paper of the grade %s can be made. `tamabako paper %s %s` tells why."
                                                .formatted(grade.id(), ladder, grade.id())));
        int exit = LineWork.of(command).gather(in, gathered);
        Planner planner = Planner.of(Exercises.of(ladder, grade, gathered.tables));
        List<Planned> planned = gathered.planned(planner, outline, wish);
        for (Planned each : planned) {
            String line = PlanJson.of(each.pupil(), outline.grade(), each.practice()).toString();
            command.commandLine().getOut().println(line);
        }
        command.commandLine().getOut().flush();
        sheets.print(
                planned.stream()
                        .filter(each -> !each.practice().items().isEmpty())
                        .map(Planned::sheet)
                        .toList());
        return exit;
    }

    @Override
    public Read read(String line) {
        Attempt attempt = AttemptCheck.checked(AttemptJson.parse(line));
        return new Read(
                attempt.pupil().orElse(""),
                attempt.problem(),
                Load.of(List.of(tables.of(attempt.problem())), 1),
                Manner.of(attempt.problem()),
                Worked.of(attempt, tables),
                MasteryAnswer.of(tables.of(attempt.problem()), attempt));
    }

    @Override
    public void keep(Read read) {
        pupils.computeIfAbsent(read.pupil(), _ -> Pupil.empty()).add(read);
    }

    private List<Planned> planned(Planner planner, Outline outline, PlanWish wish) {
        return pupils.entrySet().parallelStream()
                .map(entry -> plan(entry.getKey(), entry.getValue(), planner, outline, wish))
                .toList();
    }

    private static Planned plan(
            String name, Pupil pupil, Planner planner, Outline outline, PlanWish wish) {
        Readiness readiness =
                Forecast.PLAIN.of(Standing.of(pupil.worked(), Variety.USUAL), outline);
        PlanWish own =
                new PlanWish(
                        wish.count(),
                        wish.daysToExam(),
                        pupil.seen(),
                        wish.seed() + 31L * name.hashCode());
        return new Planned(name, planner.plan(pupil.lacks(), readiness, own));
    }
}
