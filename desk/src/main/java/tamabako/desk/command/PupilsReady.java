package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import tamabako.insight.readiness.Forecast;
import tamabako.insight.readiness.ForecastsHeld;
import tamabako.insight.readiness.HeldJson;
import tamabako.insight.readiness.NextGrades;
import tamabako.insight.readiness.Outlines;
import tamabako.insight.readiness.PastForecast;
import tamabako.insight.readiness.Readiness;
import tamabako.insight.readiness.ReadinessJson;
import tamabako.insight.readiness.Recalibration;
import tamabako.insight.readiness.Standing;
import tamabako.insight.readiness.Variety;
import tamabako.insight.readiness.Worked;
import tamabako.insight.slip.EventTables;
import tamabako.problems.Attempt;
import tamabako.problems.AttemptCheck;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;
import tamabako.problems.json.AttemptJson;
import tamabako.problems.json.OutcomeJson;

/// `ready`: gathers every pupil's answers and then tells of each pupil in the order of their names.
final class PupilsReady implements LineWork.Gathering<PupilsReady.Read> {

    /// So many grades are told of where none is asked for.
    private static final int NEXT = 3;

    /// A line that was read, and whose it is: an answer, which is empty where nothing was written,
    /// or what came of an exam.
    record Read(String pupil, Optional<Worked> worked, Optional<KnownExam> exam) {}

    /// What came of an exam of one pupil.
    private record Sat(String pupil, KnownExam exam) {}

    private final EventTables tables = new EventTables();
    private final Outlines outlines = new Outlines(tables);
    private final Map<String, List<Worked>> pupils = new TreeMap<>();
    private final List<Sat> exams = new ArrayList<>();
    private final Ladder ladder;

    private PupilsReady(Ladder ladder) {
        this.ladder = ladder;
    }

    /// Does it and gives the exit code.
    ///
    /// @param grades those to tell of; none for the next ones of each pupil
    static int run(CommandSpec command, BufferedReader in, Ladder ladder, List<Grade> grades)
            throws IOException {
        PupilsReady gathered = new PupilsReady(ladder);
        int exit = LineWork.of(command).gather(in, gathered);
        gathered.lines(grades).forEach(command.commandLine().getOut()::println);
        command.commandLine().getOut().flush();
        return exit;
    }

    @Override
    public Read read(String line) {
        Optional<OutcomeJson.OfPupil> outcome = OutcomeJson.find(line, ladder.id());
        if (outcome.isPresent()) {
            KnownExam exam = KnownExam.of(outcome.get().outcome(), ladder);
            return new Read(outcome.get().pupil(), Optional.empty(), Optional.of(exam));
        }
        Attempt attempt = AttemptCheck.checked(AttemptJson.parse(line));
        return new Read(attempt.pupil().orElse(""), Worked.of(attempt, tables), Optional.empty());
    }

    @Override
    public void keep(Read read) {
        if (read.exam().isPresent()) {
            exams.add(new Sat(read.pupil(), read.exam().get()));
            return;
        }
        List<Worked> answers = pupils.computeIfAbsent(read.pupil(), _ -> new ArrayList<>());
        read.worked().ifPresent(answers::add);
    }

    /// A line for each pupil, and where outcomes were read one of how well forecasts held.
    private List<String> lines(List<Grade> grades) {
        ForecastsHeld held = new ForecastsHeld(exams.parallelStream().flatMap(this::past).toList());
        Forecast forecast = new Forecast(held.correction());
        List<String> lines =
                new ArrayList<>(
                        pupils.entrySet().parallelStream()
                                .map(pupil ->
                                        line(pupil.getKey(), pupil.getValue(), forecast, grades))
                                .toList());
        if (!exams.isEmpty()) {
            lines.add(HeldJson.of(held).toString());
        }
        return lines;
    }

    private Stream<Recalibration.Outcome> past(Sat sat) {
        KnownExam exam = sat.exam();
        return outlines
                .of(exam.outcome().ladder(), exam.grade())
                .flatMap(outline ->
                        PastForecast.of(
                                pupils.getOrDefault(sat.pupil(), List.of()),
                                Variety.USUAL,
                                outline,
                                exam.outcome()))
                .stream();
    }

    private String line(String pupil, List<Worked> answers, Forecast forecast, List<Grade> grades) {
        Standing standing = Standing.of(answers, Variety.USUAL);
        List<Readiness> told =
                grades.isEmpty()
                        ? new NextGrades(forecast, outlines).of(standing, ladder, NEXT)
                        : grades.stream()
                                .flatMap(grade -> outlines.of(ladder.id(), grade).stream())
                                .map(outline -> forecast.of(standing, outline))
                                .toList();
        return ReadinessJson.of(pupil, answers.size(), told).toString();
    }
}
