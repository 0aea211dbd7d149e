package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import picocli.CommandLine.Model.CommandSpec;
import tamabako.insight.readiness.Forecast;
import tamabako.insight.readiness.NextGrades;
import tamabako.insight.readiness.Outlines;
import tamabako.insight.readiness.Readiness;
import tamabako.insight.readiness.ReadinessJson;
import tamabako.insight.readiness.Standing;
import tamabako.insight.readiness.Variety;
import tamabako.insight.readiness.Worked;
import tamabako.insight.slip.EventTables;
import tamabako.problems.Attempt;
import tamabako.problems.AttemptCheck;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;
import tamabako.problems.json.AttemptJson;

/// `ready`: gathers every pupil's answers and then tells of each pupil in the order of their names.
final class PupilsReady implements LineWork.Gathering<PupilsReady.Read> {

    /// So many grades are told of where none is asked for.
    private static final int NEXT = 3;

    /// An answer that was read, and whose it is; empty where nothing was written.
    record Read(String pupil, Optional<Worked> worked) {}

    private final EventTables tables = new EventTables();
    private final Map<String, List<Worked>> pupils = new TreeMap<>();

    private PupilsReady() {}

    /// Does it and gives the exit code.
    ///
    /// @param grades those to tell of; none for the next ones of each pupil
    static int run(CommandSpec command, BufferedReader in, Ladder ladder, List<Grade> grades)
            throws IOException {
        PupilsReady gathered = new PupilsReady();
        int exit = LineWork.of(command).gather(in, gathered);
        gathered.lines(ladder, grades).forEach(command.commandLine().getOut()::println);
        command.commandLine().getOut().flush();
        return exit;
    }

    @Override
    public Read read(String line) {
        Attempt attempt = AttemptCheck.checked(AttemptJson.parse(line));
        return new Read(attempt.pupil().orElse(""), Worked.of(attempt, tables));
    }

    @Override
    public void keep(Read read) {
        List<Worked> answers = pupils.computeIfAbsent(read.pupil(), _ -> new ArrayList<>());
        read.worked().ifPresent(answers::add);
    }

    private List<String> lines(Ladder ladder, List<Grade> grades) {
        Outlines outlines = new Outlines(tables);
        NextGrades next = new NextGrades(Forecast.PLAIN, outlines);
        return pupils.entrySet().parallelStream()
                .map(pupil -> {
                    Standing standing = Standing.of(pupil.getValue(), Variety.USUAL);
                    List<Readiness> told =
                            grades.isEmpty()
                                    ? next.of(standing, ladder, NEXT)
                                    : asked(standing, outlines, ladder, grades);
                    return ReadinessJson.of(pupil.getKey(), pupil.getValue().size(), told)
                            .toString();
                })
                .toList();
    }

    private static List<Readiness> asked(
            Standing standing, Outlines outlines, Ladder ladder, List<Grade> grades) {
        return grades.stream()
                .flatMap(grade -> outlines.of(ladder.id(), grade).stream())
                .map(outline -> Forecast.PLAIN.of(standing, outline))
                .toList();
    }
}
