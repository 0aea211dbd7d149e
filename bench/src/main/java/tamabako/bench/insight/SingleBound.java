package tamabako.bench.insight;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import tamabako.insight.simulation.Fate;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipKind;

/// The best that any judge could do with one slip of the simulated pupils: every single slip of a
/// problem is made in turn, and what is then seen is tabled with its chance.
///
/// All answers are judged by their chances, so that only the problems are a sample.
final class SingleBound {

    private static final List<SlipKind> KINDS = List.of(SlipKind.values());
    private static final int THREE = 3;

    private double all;
    private double bestFirst;
    private double bestThree;
    private double first;
    private double three;

    /// Tries one problem.
    ///
    /// @param pupil what is seen of a pupil of this fate: the answer, or totals with it; empty
    ///   where the pupil is stuck
    /// @param rates the rates by which pupils slip
    /// @param judge the kinds named for what is seen, likeliest first
    <T> void ask(
            Function<Fate, Optional<T>> pupil, Rates rates, Function<T, List<SlipKind>> judge) {
        Fate none = Fate.kind();
        T right = pupil.apply(none).orElseThrow();
        Map<T, double[]> seen = new LinkedHashMap<>();
        for (int i = 0; i < none.occasions().size(); i++) {
            Fate.Occasion occasion = none.occasions().get(i);
            pupil.apply(Fate.at(i))
                    .filter(wrong -> !wrong.equals(right))
                    .map(wrong -> seen.computeIfAbsent(wrong, _ -> new double[KINDS.size()]))
                    .ifPresent(chances ->
                            chances[KINDS.indexOf(occasion.kind())] +=
                                    occasion.weight() * rates.of(occasion.kind()));
        }
        seen.forEach((wrong, chances) -> note(chances, judge.apply(wrong)));
    }

    private void note(double[] chances, List<SlipKind> named) {
        double[] best =
                IntStream.range(0, chances.length)
                        .mapToObj(kind -> chances[kind])
                        .sorted(Comparator.reverseOrder())
                        .mapToDouble(chance -> chance)
                        .toArray();
        double[] ours = named.stream().mapToDouble(kind -> chances[KINDS.indexOf(kind)]).toArray();
        all += Arrays.stream(chances).sum();
        bestFirst += best[0];
        bestThree += Arrays.stream(best).limit(THREE).sum();
        first += ours[0];
        three += Arrays.stream(ours).limit(THREE).sum();
    }

    /// First and among three: ours, and the bound.
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.3f / %.3f | %.3f / %.3f",
                first / all,
                three / all,
                bestFirst / all,
                bestThree / all);
    }
}
