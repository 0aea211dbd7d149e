package tamabako.desk.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
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
import tamabako.insight.pace.PaceAnswer;
import tamabako.insight.pace.PaceJson;
import tamabako.insight.pace.PacePopulation;
import tamabako.insight.pace.PaceTally;
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

    /// An answer that was read, and whose it is; without what it tells if it is no number, and
    /// without its time if none is given.
    record Read(
            String pupil,
            Manner manner,
            Optional<MasteryAnswer> answer,
            Optional<PaceAnswer> pace) {}

    private record Tallies(MasteryTally mastery, PaceTally pace) {

        static Tallies of(Who who) {
            return new Tallies(new MasteryTally(who.manner()), new PaceTally());
        }

        void keep(Read read) {
            read.answer().ifPresentOrElse(mastery::add, mastery::addNotRead);
            read.pace().ifPresent(pace::add);
        }
    }

    private record Populations(MasteryPopulation mastery, PacePopulation pace) {}

    private final Optional<Demand> demand;
    private final EventTables tables = new EventTables();
    private final Map<Who, Tallies> pupils =
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
                MasteryAnswer.of(tables.of(attempt.problem()), attempt),
                PaceAnswer.of(attempt));
    }

    @Override
    public void keep(Read read) {
        pupils.computeIfAbsent(new Who(read.pupil(), read.manner()), Tallies::of).keep(read);
    }

    /// One line for each pupil and manner.
    List<String> lines() {
        Map<Manner, Populations> populations = new EnumMap<>(Manner.class);
        for (Manner manner : Manner.values()) {
            populations.put(manner, learned(manner));
        }
        return pupils.entrySet().parallelStream()
                .map(pupil ->
                        line(
                                pupil.getKey(),
                                pupil.getValue(),
                                Objects.requireNonNull(populations.get(pupil.getKey().manner()))))
                .toList();
    }

    private Populations learned(Manner manner) {
        List<Tallies> all =
                pupils.entrySet().stream()
                        .filter(pupil -> pupil.getKey().manner() == manner)
                        .map(Map.Entry::getValue)
                        .toList();
        return new Populations(
                MasteryPopulation.shipped()
                        .learnedFrom(all.stream().map(Tallies::mastery).toList()),
                PacePopulation.shipped().learnedFrom(all.stream().map(Tallies::pace).toList()));
    }

    private String line(Who who, Tallies tallies, Populations populations) {
        Demand asked = demand.orElseGet(() -> Demand.of(tallies.mastery()));
        ObjectNode node =
                PupilMasteryJson.of(
                        who.pupil(), tallies.mastery().told(populations.mastery(), asked));
        node.set("pace", PaceJson.of(tallies.pace().told(populations.pace())));
        return node.toString();
    }
}
