package tamabako.bench.insight;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.function.Function;
import tamabako.insight.simulation.Fate;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Finding;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.Slip;
import tamabako.insight.slip.SlipFinder;
import tamabako.insight.slip.SlipKind;
import tamabako.problems.Problem;

/// One wrong answer from one slip: how often its kind is named.
final class SingleSlips {

    /// A problem and a pupil who works it.
    record Task(Problem problem, Function<Fate, OptionalLong> pupil) {}

    private final Function<EventTable, Rates> truth;
    private final Function<EventTable, Rates> taken;
    private final Score ours = new Score();
    private final Score rules = new Score();
    private final Map<SlipKind, Integer> kinds = new HashMap<>();

    /// @param truth the rates by which pupils slip
    /// @param taken the rates by which they are judged
    SingleSlips(Function<EventTable, Rates> truth, Function<EventTable, Rates> taken) {
        this.truth = truth;
        this.taken = taken;
    }

    /// Lets a pupil slip once.
    void ask(Task task, SplittableRandom random) {
        EventTable table = EventTable.of(task.problem());
        Fate none = Fate.kind();
        long right = task.pupil().apply(none).orElseThrow();
        int fatal = Fate.draw(none.occasions(), truth.apply(table), random.nextDouble());
        OptionalLong written = task.pupil().apply(Fate.at(fatal));
        if (written.isEmpty() || written.getAsLong() == right) {
            return;
        }
        SlipKind kind = none.occasions().get(fatal).kind();
        Finding finding =
                new SlipFinder(taken.apply(table)).find(table, Long.toString(written.getAsLong()));
        ours.note(finding.slips().stream().map(Slip::kind).toList(), kind);
        rules.note(List.of(HandRules.kind(task.problem(), written.getAsLong() - right)), kind);
        kinds.merge(kind, 1, Integer::sum);
    }

    /// First and among three.
    Score ours() {
        return ours;
    }

    /// The rules of thumb on the difference.
    Score rules() {
        return rules;
    }

    /// The share of the commonest kind: what naming it always would give.
    double majority() {
        int most = kinds.values().stream().mapToInt(Integer::intValue).max().orElse(0);
        return (double) most / ours.asked();
    }
}
