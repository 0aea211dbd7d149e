package tamabako.desk.command;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import tamabako.insight.mastery.Demand;
import tamabako.insight.mastery.MasteryAnswer;
import tamabako.insight.mastery.MasteryPopulation;
import tamabako.insight.mastery.MasteryTally;
import tamabako.insight.mastery.PupilMasteryJson;
import tamabako.insight.pooling.Manner;
import tamabako.insight.slip.EventTables;
import tamabako.problems.Attempt;
import tamabako.problems.AttemptCheck;
import tamabako.problems.json.AttemptJson;

/// Gathers every pupil's answers, learns from all of them how pupils slip in general, and then
/// tells of each pupil in the order of their names. Work on the frame and in the head are told
/// apart.
final class MasteryOfPupils implements LineWork.Gathering<MasteryOfPupils.Read> {

    private record Who(String pupil, Manner manner) {}

    /// An answer that was read, and whose it is; without what it tells if it is no number.
    record Read(String pupil, Manner manner, Optional<MasteryAnswer> answer) {}

    private final Optional<Demand> demand;
    private final EventTables tables = new EventTables();
    private final Map<Who, MasteryTally> pupils =
            new TreeMap<>(Comparator.comparing(Who::pupil).thenComparing(Who::manner));

    /// @param demand what is asked; empty for what each pupil's own problems ask
    MasteryOfPupils(Optional<Demand> demand) {
        this.demand = demand;
    }

    @Override
    public Read read(String line) {
        Attempt attempt = AttemptCheck.checked(AttemptJson.parse(line));
        return new Read(
                attempt.pupil().orElse(""),
                Manner.of(attempt.problem()),
                MasteryAnswer.of(tables.of(attempt.problem()), attempt));
    }

    @Override
    public void keep(Read read) {
        MasteryTally tally =
                pupils.computeIfAbsent(
                        new Who(read.pupil(), read.manner()), who -> new MasteryTally(who.manner()));
        read.answer().ifPresentOrElse(tally::add, tally::addNotRead);
    }

    /// One line for each pupil and manner.
    List<String> lines() {
        Map<Manner, MasteryPopulation> populations = new EnumMap<>(Manner.class);
        for (Manner manner : Manner.values()) {
            List<MasteryTally> all =
                    pupils.values().stream().filter(tally -> tally.manner() == manner).toList();
            populations.put(manner, MasteryPopulation.shipped().learnedFrom(all));
        }
        return pupils.entrySet().parallelStream()
                .map(pupil -> line(pupil.getKey(), pupil.getValue(), populations))
                .toList();
    }

    private String line(
            Who who, MasteryTally tally, Map<Manner, MasteryPopulation> populations) {
        MasteryPopulation population = Objects.requireNonNull(populations.get(who.manner()));
        Demand asked = demand.orElseGet(() -> Demand.of(tally));
        return PupilMasteryJson.of(who.pupil(), tally.told(population, asked)).toString();
    }
}
