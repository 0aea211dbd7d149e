package tamabako.insight.readiness;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import tamabako.insight.pace.PaceAnswer;
import tamabako.insight.pace.PacePopulation;
import tamabako.insight.pace.PaceTally;
import tamabako.insight.pace.PupilPace;
import tamabako.insight.pace.WorkParts;
import tamabako.insight.pooling.Manner;

/// In which parts of the work a pupil takes longer than in others, so that problems with many of
/// them are given more time: by the pupil's own seconds for each move, in each manner of working.
///
/// It says nothing of how fast the pupil is altogether, which is a matter of [PaceBelief]. Without
/// times enough it is the shape of pupils in general.
final class PaceShape {

    private final Map<Manner, PupilPace> paces = new EnumMap<>(Manner.class);
    private final List<List<WorkParts>> worked = new ArrayList<>();

    /// @param answers for each field those in it
    /// @param today the day for which it is told
    PaceShape(List<List<Worked>> answers, OptionalLong today) {
        Map<Manner, PaceTally> tallies = new EnumMap<>(Manner.class);
        for (List<Worked> field : answers) {
            List<WorkParts> parts = new ArrayList<>();
            for (Worked answer : field) {
                if (answer.parts().isPresent() && answer.pace().isPresent()) {
                    parts.add(answer.parts().get());
                    tallies.computeIfAbsent(answer.field().manner(), _ -> new PaceTally())
                            .add(timed(answer, answer.parts().get()));
                }
            }
            worked.add(parts);
        }
        tallies.forEach((manner, tally) -> {
            if (tally.problems() >= PupilPace.ENOUGH) {
                PacePopulation general = PacePopulation.shipped();
                paces.put(
                        manner,
                        today.isPresent()
                                ? tally.told(general, today.getAsLong())
                                : tally.told(general));
            }
        });
    }

    private static PaceAnswer timed(Worked answer, WorkParts parts) {
        double seconds = Math.exp(answer.pace().getAsDouble()) * usual(parts);
        return new PaceAnswer(parts, seconds, answer.day());
    }

    /// The seconds of pupils in general.
    private static double usual(WorkParts parts) {
        return parts.total();
    }

    /// By how much the logarithm of the time for such work is longer than for pupils in general.
    private double longer(Field field, Optional<WorkParts> parts) {
        PupilPace pace = paces.get(field.manner());
        return pace == null || parts.isEmpty()
                ? 0
                : pace.shape(parts.get()) - Math.log(usual(parts.get()));
    }

    /// An answer held against the time of this shape.
    Worked of(Worked answer) {
        return answer.against(longer(answer.field(), answer.parts()));
    }

    /// The logarithms of the times of the problems of a section by this shape.
    double[] logs(Outline.Part part) {
        return part.tasks().stream()
                .mapToDouble(task -> Math.log(task.seconds()) + longer(part.field(), task.parts()))
                .toArray();
    }

    /// How doubtful the time of a section is because it asks for other parts of the work than the
    /// pupil's answers in its field did: a standard deviation of logarithms.
    double doubt(Outline.Part part) {
        PupilPace pace = paces.get(part.field().manner());
        List<WorkParts> asked =
                part.tasks().stream().flatMap(task -> task.parts().stream()).toList();
        List<WorkParts> before = worked.get(Field.all().indexOf(part.field()));
        return pace == null || asked.isEmpty() || before.isEmpty()
                ? 0
                : pace.doubtBeside(asked, before);
    }
}
