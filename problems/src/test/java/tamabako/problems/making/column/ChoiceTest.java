package tamabako.problems.making.column;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import tamabako.problems.making.draw.Draws;

class ChoiceTest {

    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    @Test
    void aThingIsDrawnAsOftenAsThereAreColumnsBehindIt() {
        for (long[] counts :
                new long[][] {{1}, {1, 2}, {5, 0, 1, 3}, {1, 1000}, {7, 7, 7, 7, 7, 1, 0, 0, 90}}) {
            Choice choice = choice(counts);
            Draws draws = new Draws(counts.length);
            Map<String, Integer> drawn = new TreeMap<>();
            for (int i = 0; i < 200_000; i++) {
                drawn.merge(Integer.toString(choice.draw(draws)), 1, Integer::sum);
            }

            assertThat(choice.all()).isEqualTo(BigInteger.valueOf(Arrays.stream(counts).sum()));
            Map<String, Double> weights = new TreeMap<>();
            for (int i = 0; i < counts.length; i++) {
                if (counts[i] > 0) {
                    weights.put(Integer.toString(i), (double) counts[i]);
                }
            }
            assertThat(weights).containsKeys(drawn.keySet().toArray(String[]::new));
            if (weights.size() > 1) {
                assertThat(BruteForce.surprise(drawn, weights)).isBetween(-4.0, 4.0);
            }
        }
    }

    @Test
    void theSlotsHoldEveryThingToTheLastColumn() {
        forSeeds(
                200,
                draw -> {
                    long[] counts = new long[draw.between(1, 20)];
                    Arrays.setAll(counts, _ -> draw.chance(1, 4) ? 0 : draw.between(1, 1000));
                    counts[0]++;
                    BigInteger all = choice(counts).all();
                    BigInteger[] rooms = new BigInteger[counts.length];
                    Arrays.fill(rooms, BigInteger.ZERO);

                    Slots slots = Slots.fill(big(counts).toArray(BigInteger[]::new), all, 32);

                    for (int slot = 0; slot < 32; slot++) {
                        if (slot < counts.length) {
                            rooms[slot] = rooms[slot].add(slots.own(slot));
                        }
                        int other = slots.other(slot);
                        if (other != slot) {
                            rooms[other] = rooms[other].add(all.subtract(slots.own(slot)));
                        }
                    }
                    for (int i = 0; i < counts.length; i++) {
                        assertThat(rooms[i]).isEqualTo(BigInteger.valueOf(32 * counts[i]));
                    }
                });
    }

    /// One column behind the first thing and two behind the second make a slot that is the first's
    /// up to two thirds: 0.101010... in bits, so that a draw which begins like that is undecided.
    @Test
    void aDrawOnTheBorderIsDecidedByFurtherBits() {
        Choice choice = choice(1, 2);
        long border = 0x5555_5555_5555_0000L;
        int first = 0;
        int times = 1 << 15;
        for (int low = 0; low < times; low++) {
            Draws draws = new Draws(seedOf(border | low));
            assertThat(new Draws(seedOf(border | low)).bits()).isEqualTo(border | low);
            first += choice.draw(draws) == 0 ? 1 : 0;
        }
        double expected = times * 2 / 3.0;
        assertThat(first).isCloseTo((int) expected, within(4 * Math.sqrt(expected / 3)));
        assertThat(choice.draw(new Draws(seedOf(border - 1)))).isZero();
        assertThat(choice.draw(new Draws(seedOf(border + times)))).isEqualTo(1);
    }

    /// The seed whose first bits are these: each step of SplitMix64 undone.
    private static long seedOf(long bits) {
        long z = bits ^ (bits >>> 31) ^ (bits >>> 62);
        z *= inverse(0x94D049BB133111EBL);
        z = z ^ (z >>> 27) ^ (z >>> 54);
        z *= inverse(0xBF58476D1CE4E5B9L);
        z = z ^ (z >>> 30) ^ (z >>> 60);
        return z - GOLDEN;
    }

    private static long inverse(long odd) {
        long inverse = odd;
        for (int i = 0; i < 6; i++) {
            inverse *= 2 - odd * inverse;
        }
        return inverse;
    }

    private static org.assertj.core.data.Offset<Integer> within(double off) {
        return org.assertj.core.data.Offset.offset((int) off);
    }

    private static Choice choice(long... counts) {
        return Choice.of(big(counts));
    }

    private static List<BigInteger> big(long... counts) {
        return LongStream.of(counts).mapToObj(BigInteger::valueOf).toList();
    }
}
