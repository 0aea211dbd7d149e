package tamabako.desk.progress;

import java.util.ArrayList;
import java.util.List;
import tamabako.insight.mastery.MasteryPopulation;
import tamabako.insight.mastery.MasteryTally;
import tamabako.insight.pace.PacePopulation;
import tamabako.insight.pace.PaceTally;
import tamabako.insight.pooling.Manner;
import tamabako.insight.pooling.Population;
import tamabako.insight.slip.Evidence;

/// Pupils in general, who work in one manner.
///
/// @param slips how often slips are made
/// @param mastery how far pupils differ in the moves of the hand
/// @param pace how long they take
record InGeneral(Population slips, MasteryPopulation mastery, PacePopulation pace) {

    /// As the shipped rates and times have them.
    static InGeneral shipped(Manner manner) {
        return new InGeneral(
                Population.of(manner.shipped()),
                MasteryPopulation.shipped(),
                PacePopulation.shipped());
    }

    /// As the work of these pupils has them.
    static InGeneral of(List<Gathered> group, Manner manner) {
        List<Evidence> slips = new ArrayList<>();
        List<MasteryTally> mastery = new ArrayList<>();
        List<PaceTally> pace = new ArrayList<>();
        for (Gathered one : group) {
            Gathered.OfManner in = one.in(manner);
            slips.addAll(in.slips().answers());
            mastery.add(in.mastery());
            pace.add(in.pace());
        }
        InGeneral shipped = shipped(manner);
        return new InGeneral(
                shipped.slips().learnedFrom(slips),
                shipped.mastery().learnedFrom(mastery),
                shipped.pace().learnedFrom(pace));
    }
}
