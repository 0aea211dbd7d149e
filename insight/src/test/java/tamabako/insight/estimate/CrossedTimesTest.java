package tamabako.insight.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import tamabako.insight.estimate.CrossedSums.Time;

/// How long 25 persons take over 600 words and other strings of letters, against lme4.
class CrossedTimesTest {

    /// Of the logarithms of all 7,096 times, as the table of persons says.
    private static final double SQUARES = 1318.0264737290197;

    private static RealVector vector(List<Double> numbers) {
        return MatrixUtils.createRealVector(numbers.stream().mapToDouble(x -> x).toArray());
    }

    private static CrossedSums sums() {
        Table persons = Table.read("lexdec-persons");
        Table items = Table.read("lexdec-items");
        int last = items.rows().size() - 1;
        RealMatrix taken = MatrixUtils.createRealMatrix(persons.rows().size(), last + 1);
        for (int p = 0; p < persons.rows().size(); p++) {
            BigInteger bits = new BigInteger(persons.words("items").get(p), 16);
            for (int i = 0; i <= last; i++) {
                taken.setEntry(p, i, bits.testBit(last - i) ? 1 : 0);
            }
        }
        return new CrossedSums(
                taken, vector(persons.numbers("sum")), vector(items.numbers("sum")), SQUARES);
    }

    private static Features features() {
        return Features.of(
                Table.read("lexdec-items").numbers("nonword").stream()
                        .map(nonword -> List.of(1.0, nonword))
                        .toList());
    }

    @Test
    void sevenThousandTimes() {
        CrossedTimes found = CrossedTimes.of(features(), sums());

        List<Double> numbers =
                List.of(
                        found.effects().get(0).value(),
                        found.effects().get(1).value(),
                        found.problemSpread(),
                        found.personSpread(),
                        found.residual(),
                        found.logLikelihood(),
                        sums().taken().getFrobeniusNorm() * sums().taken().getFrobeniusNorm(),
                        (double) found.persons().size(),
                        (double) found.problems().size());
        Largest.between(numbers, Table.read("lexdec").numbers("est")).isAtMost(1e-3);
    }

    /// Thirty pupils at forty problems, a third of the times missing, spreads known.
    @Test
    void whoIsSlowIsFoundFromIncompleteTimes() {
        SplittableRandom chance = new SplittableRandom(8);
        double[] slow = chance.doubles(30).map(x -> 0.6 * x - 0.3).toArray();
        double[] beside = chance.doubles(40).map(x -> 0.4 * x - 0.2).toArray();
        List<List<Double>> features = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            features.add(List.of(1.0, i / 40.0));
        }
        List<Time> times = new ArrayList<>();
        for (int p = 0; p < 30; p++) {
            for (int i = 0; i < 40; i++) {
                if (chance.nextDouble() < 2 / 3.0) {
                    double log = 3 + i / 40.0 + slow[p] + beside[i] + 0.2 * chance.nextGaussian();
                    times.add(new Time(p, i, log));
                }
            }
        }

        CrossedTimes found = CrossedTimes.of(Features.of(features), CrossedSums.of(30, 40, times));

        double mean = Arrays.stream(slow).average().orElseThrow();
        int inside = 0;
        for (int p = 0; p < 30; p++) {
            Estimate person = found.persons().get(p);
            double away = person.value() - (slow[p] - mean);
            inside += Math.abs(away) < 2 * person.standardError() ? 1 : 0;
        }
        assertThat(inside).isGreaterThanOrEqualTo(26);
        assertThat(found.residual()).isCloseTo(0.2, within(0.02));
        assertThat(found.personSpread()).isCloseTo(0.6 / Math.sqrt(12), within(0.05));
        Estimate slope = found.effects().get(1);
        assertThat(slope.value()).isCloseTo(1, within(3 * slope.standardError()));
    }
}
