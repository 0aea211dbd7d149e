package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import picocli.CommandLine.Model.CommandSpec;
import tamabako.insight.pooling.Manner;
import tamabako.insight.pooling.Population;
import tamabako.insight.pooling.PupilAnswer;
import tamabako.insight.pooling.PupilSlipsJson;
import tamabako.insight.pooling.PupilTally;
import tamabako.insight.slip.EventTables;
import tamabako.insight.slip.Evidence;
import tamabako.problems.Attempt;
import tamabako.problems.AttemptCheck;
import tamabako.problems.json.AttemptJson;

/// `slips --pupils`: gathers every pupil's answers, learns from all of them how often pupils slip
/// in general, and then tells of each pupil in the order of their names. Work on the frame and in
/// the head are told apart.
final class PupilsOfSlips implements LineWork.Gathering<PupilsOfSlips.Read> {

    /// Whose answers are gathered, and how they were worked.
    private record Who(String pupil, Manner manner) {}

    /// An answer that was read, and whose it is; without what it tells if it is no number.
    record Read(String pupil, Manner manner, Optional<PupilAnswer> answer) {}

    private final EventTables tables = new EventTables();
    private final Map<Who, PupilTally> pupils =
            new TreeMap<>(Comparator.comparing(Who::pupil).thenComparing(Who::manner));

    private PupilsOfSlips() {}

    /// Does it and gives the exit code.
    static int run(CommandSpec command, BufferedReader in) throws IOException {
        PupilsOfSlips gathered = new PupilsOfSlips();
        int exit = LineWork.of(command).gather(in, gathered);
        gathered.lines().forEach(command.commandLine().getOut()::println);
        command.commandLine().getOut().flush();
        return exit;
    }

    @Override
    public Read read(String line) {
        Attempt attempt = AttemptCheck.checked(AttemptJson.parse(line));
        Manner manner = Manner.of(attempt.problem());
        return new Read(
                attempt.pupil().orElse(""),
                manner,
                PupilAnswer.of(tables.of(attempt.problem()), attempt.answer(), manner.shipped()));
    }

    @Override
    public void keep(Read read) {
        PupilTally tally =
                pupils.computeIfAbsent(new Who(read.pupil(), read.manner()), _ -> new PupilTally());
        read.answer().ifPresentOrElse(tally::add, tally::addNotRead);
    }

    private List<String> lines() {
        Map<Manner, Population> populations = new EnumMap<>(Manner.class);
        for (Manner manner : Manner.values()) {
            List<Evidence> all = new ArrayList<>();
            pupils.forEach((who, tally) -> {
                if (who.manner() == manner) {
                    all.addAll(tally.answers());
                }
            });
            populations.put(manner, Population.of(manner.shipped()).learnedFrom(all));
        }
        return pupils.entrySet().parallelStream()
                .map(pupil -> line(pupil.getKey(), pupil.getValue(), populations))
                .toList();
    }

    private static String line(Who who, PupilTally tally, Map<Manner, Population> populations) {
        Population population = populations.getOrDefault(who.manner(), Population.shipped());
        return PupilSlipsJson.of(
                        who.pupil(), who.manner(), tally.told(population, who.manner().shipped()))
                .toString();
    }
}
