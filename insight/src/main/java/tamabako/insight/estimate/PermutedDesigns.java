package tamabako.insight.estimate;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.stat.correlation.PearsonsCorrelation;

/// Whether features tell anything of how hard problems are: their difficulties from their own
/// features, held against those from the features of other problems drawn at random.
///
/// A test of likelihoods rejects nearly every set of features, since none tells all; this asks
/// instead whether they tell more than chance.
///
/// Source: Baghaei and Hohensinn, Practical Assessment, Research and Evaluation 22 (2017).
///
/// @param correlation of the problems' difficulties with what their features make of them
/// @param byChance the same with features permuted, in rising order
public record PermutedDesigns(double correlation, List<Double> byChance) {

    public PermutedDesigns {
        byChance = List.copyOf(byChance);
    }

    /// Permutes the features that many times.
    ///
    /// Nothing where difficulties or effects cannot be told.
    ///
    /// @param seed same in, same out
    public static Optional<PermutedDesigns> of(
            Features features, AnswerSums sums, int designs, long seed) {
        Optional<Difficulties> each = ConditionalRasch.each(sums);
        Optional<Difficulties> by = ConditionalRasch.by(features, sums);
        if (each.isEmpty() || by.isEmpty()) {
            return Optional.empty();
        }
        SplittableRandom chance = new SplittableRandom(seed);
        double[] byChance =
                IntStream.range(0, designs)
                        .mapToObj(_ -> features.permuted(order(features.problems(), chance)))
                        .flatMap(drawn -> ConditionalRasch.by(drawn, sums).stream())
                        .mapToDouble(drawn -> correlation(each.get(), drawn))
                        .sorted()
                        .toArray();
        return Optional.of(
                new PermutedDesigns(
                        correlation(each.get(), by.get()),
                        Arrays.stream(byChance).boxed().toList()));
    }

    /// The share of permuted designs that do as well, the own one counted among them: small where
    /// the features tell something.
    public double share() {
        long asWell = byChance.stream().filter(other -> other >= correlation).count();
        return (1.0 + asWell) / (1 + byChance.size());
    }

    private static double correlation(Difficulties some, Difficulties others) {
        return new PearsonsCorrelation()
                .correlation(
                        some.values().stream().mapToDouble(x -> x).toArray(),
                        others.values().stream().mapToDouble(x -> x).toArray());
    }

    private static int[] order(int problems, SplittableRandom chance) {
        int[] order = IntStream.range(0, problems).toArray();
        for (int i = problems - 1; i > 0; i--) {
            int j = chance.nextInt(i + 1);
            int last = order[i];
            order[i] = order[j];
            order[j] = last;
        }
        return order;
    }
}
