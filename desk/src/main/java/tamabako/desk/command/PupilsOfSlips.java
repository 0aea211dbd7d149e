package tamabako.desk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import picocli.CommandLine.Model.CommandSpec;
import tamabako.insight.pooling.Population;
import tamabako.insight.pooling.PupilAnswer;
import tamabako.insight.pooling.PupilSlipsJson;
import tamabako.insight.pooling.PupilTally;
import tamabako.insight.slip.EventTables;
import tamabako.insight.slip.Evidence;
import tamabako.insight.slip.Rates;
import tamabako.problems.Attempt;
import tamabako.problems.AttemptCheck;
import tamabako.problems.json.AttemptJson;

/// `slips --pupils`: gathers every pupil's answers, learns from all of them how often pupils slip
/// in general, and then tells of each pupil in the order of their names.
final class PupilsOfSlips implements LineWork.Gathering<PupilsOfSlips.Read> {

    /// An answer that was read, and whose it is; without what it tells if it is no number.
    record Read(String pupil, Optional<PupilAnswer> answer) {}

    private final EventTables tables = new EventTables();
    private final Map<String, PupilTally> pupils = new TreeMap<>();

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
        return new Read(
                attempt.pupil().orElse(""),
                PupilAnswer.of(tables.of(attempt.problem()), attempt.answer(), Rates.shipped()));
    }

    @Override
    public void keep(Read read) {
        PupilTally tally = pupils.computeIfAbsent(read.pupil(), _ -> new PupilTally());
        read.answer().ifPresentOrElse(tally::add, tally::addNotRead);
    }

    private List<String> lines() {
        List<Evidence> all = new ArrayList<>();
        pupils.values().forEach(pupil -> all.addAll(pupil.answers()));
        Population population = Population.shipped().learnedFrom(all);
        return pupils.entrySet().parallelStream()
                .map(pupil ->
                        PupilSlipsJson.of(
                                        pupil.getKey(),
                                        pupil.getValue().told(population, Rates.shipped()))
                                .toString())
                .toList();
    }
}
