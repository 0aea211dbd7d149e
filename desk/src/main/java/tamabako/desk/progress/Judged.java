package tamabako.desk.progress;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import tamabako.insight.mastery.Demand;
import tamabako.insight.mastery.MasteryTally;
import tamabako.insight.mastery.PupilMastery;
import tamabako.insight.mastery.SlipPosterior;
import tamabako.insight.pace.PupilPace;
import tamabako.insight.plan.Lacks;
import tamabako.insight.plan.Learning;
import tamabako.insight.pooling.Manner;
import tamabako.insight.pooling.PupilSlips;
import tamabako.insight.readiness.Readiness;
import tamabako.insight.readiness.Standing;
import tamabako.insight.readiness.Variety;

/// The judgements on one pupil's work.
///
/// @param gathered the work
/// @param mastery by manner, those in which anything was worked
/// @param slips of work on the frame, or in the head where there is none on the frame
/// @param pace of the same
/// @param standing for forecasts
/// @param lacks for plans
/// @param forecasts those that were asked for so far, by what was asked
record Judged(
        Gathered gathered,
        List<PupilMastery> mastery,
        PupilSlips slips,
        PupilPace pace,
        Standing standing,
        Lacks lacks,
        Map<String, List<Readiness>> forecasts) {

    /// Judges the work of one pupil.
    ///
    /// @param general pupils in general, by manner
    static Judged of(Gathered gathered, Map<Manner, InGeneral> general) {
        List<PupilMastery> mastery = new ArrayList<>();
        general.forEach((manner, known) -> {
            MasteryTally tally = gathered.in(manner).mastery();
            if (tally.answers() > 0) {
                mastery.add(tally.told(known.mastery(), Demand.of(tally)));
            }
        });
        Manner manner =
                gathered.in(Manner.FRAME).mastery().answers() > 0 ? Manner.FRAME : Manner.MIND;
        InGeneral known = general.getOrDefault(manner, InGeneral.shipped(manner));
        Gathered.OfManner in = gathered.in(manner);
        return new Judged(
                gathered,
                mastery,
                in.slips().told(known.slips(), manner.shipped()),
                in.pace().told(known.pace()),
                Standing.of(gathered.worked(), Variety.USUAL),
                Lacks.of(
                        posterior(gathered, general, Manner.FRAME),
                        posterior(gathered, general, Manner.MIND),
                        gathered.practised(),
                        Learning.USUAL),
                new ConcurrentHashMap<>());
    }

    private static SlipPosterior posterior(
            Gathered gathered, Map<Manner, InGeneral> general, Manner manner) {
        MasteryTally tally = gathered.in(manner).mastery();
        InGeneral known = general.getOrDefault(manner, InGeneral.shipped(manner));
        return tally.told(known.mastery(), Demand.of(tally)).posterior();
    }

    /// How many answers there are.
    int answers() {
        return gathered.days().stream().mapToInt(Gathered.Day::answers).sum();
    }

    /// How many of them are right.
    int right() {
        return gathered.days().stream().mapToInt(Gathered.Day::right).sum();
    }
}
