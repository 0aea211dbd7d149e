package tamabako.problems.making.column;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tamabako.problems.making.draw.Draws;

class DiceTest {

    @Test
    void everyThrowIsEquallyLikely() {
        int[] sides = {99, 5, 3, 7, 2};
        int[] thrown = new int[4];
        Draws draws = new Draws(1);
        Map<String, Integer> drawn = new TreeMap<>();
        for (int i = 0; i < 210_000; i++) {
            Dice.roll(draws, sides, 1, 4, thrown);
            drawn.merge(Arrays.toString(thrown), 1, Integer::sum);
        }

        assertThat(drawn).hasSize(5 * 3 * 7 * 2);
        Map<String, Double> weights = new TreeMap<>();
        drawn.keySet().forEach(one -> weights.put(one, 1.0));
        assertThat(BruteForce.surprise(drawn, weights)).isBetween(-4.0, 4.0);
    }

    /// Two dice of 2^31 - 1 sides: their throws fill no more than a quarter of the 64 bits evenly,
    /// and one bit of the first number would come too often if the rest were not drawn again.
    @Test
    void manySidesAreNoLessEven() {
        int most = Integer.MAX_VALUE;
        int[] thrown = new int[2];
        Draws draws = new Draws(2);
        int[] eighths = new int[8];
        for (int i = 0; i < 80_000; i++) {
            Dice.roll(draws, new int[] {most, most}, 0, 2, thrown);
            assertThat(thrown[0]).isBetween(0, most - 1);
            eighths[thrown[1] >>> 28]++;
        }
        for (int times : eighths) {
            // Five standard deviations of a count with chance 1/8.
            assertThat(times).isBetween(9_533, 10_467);
        }
    }

    @Test
    void aBagIsEmptiedInEveryOrderAlike() {
        int[] counts = {0, 1, 0, 0, 2, 0, 0, 0, 1, 1};
        Bag bag = new Bag(7);
        Draws draws = new Draws(3);
        Map<String, Integer> drawn = new TreeMap<>();
        for (int i = 0; i < 60_000; i++) {
            bag.fill(counts);
            bag.empty(draws);
            long row = bag.row(7, 0, 6);
            drawn.merge(Long.toString(Digits.number(row)), 1, Integer::sum);
        }

        assertThat(drawn).hasSize(60).containsKeys("714489", "798441");
        Map<String, Double> weights = new TreeMap<>();
        drawn.keySet().forEach(one -> weights.put(one, 1.0));
        assertThat(BruteForce.surprise(drawn, weights)).isBetween(-4.0, 4.0);
    }

    @Test
    void rowsOutOfABagTakeItsDigitsOneAfterTheOther() {
        int[] counts = {10, 10, 10, 10, 10, 10, 10, 10, 10, 10};
        Bag bag = new Bag(100);
        bag.fill(counts);
        bag.empty(new Draws(4));
        StringBuilder inOne = new StringBuilder();
        for (int from = 0; from < 100; from += 10) {
            inOne.append(Long.toString(Digits.number(bag.row(1, from, 11))).substring(1));
        }
        StringBuilder inTwo = new StringBuilder();
        for (int from = 0; from < 99; from += 3) {
            inTwo.append(Long.toString(Digits.number(bag.row(9, from, 4))).substring(1));
        }

        assertThat(inOne.substring(0, 99)).isEqualTo(inTwo.toString());
        for (char digit = '0'; digit <= '9'; digit++) {
            char one = digit;
            assertThat(inOne.chars().filter(c -> c == one)).hasSize(10);
        }
        assertThat(Digits.number(bag.row(6, 5, 1))).isEqualTo(6);
    }
}
