package tamabako.problems.making.column;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.frame.Technique.DIRECT;
import static tamabako.frame.Technique.FIVE_COMPLEMENT;
import static tamabako.frame.Technique.TEN_COMPLEMENT;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tamabako.frame.Technique;
import tamabako.problems.making.column.HandCondition.OnlyTechniques;

class RodCountsTest {

    /// The same number came out of a program apart from this one, which filled a table over sign,
    /// rod, digit held and carry.
    @Test
    void allDirectColumnsOfTenRowsOfTwoDigitsAreCountedExactly() {
        Asked asked = asked(10, 2, Signs.minus(3, 9), DIRECT);

        assertThat(RodCounts.of(asked).orElseThrow().count())
                .isEqualTo(new BigInteger("11425170373113108"));
    }

    @Test
    void whatIsCountedIsWhatIsWrittenOut() {
        for (Set<Technique> allowed :
                List.of(Set.of(DIRECT), Set.of(FIVE_COMPLEMENT), Set.of(DIRECT, FIVE_COMPLEMENT))) {
            for (int minus = 0; minus <= 2; minus++) {
                Asked asked = asked(3, 1, Signs.minus(minus), allowed.toArray(Technique[]::new));

                assertThat(RodCounts.of(asked).orElseThrow().count().intValueExact())
                        .isEqualTo(written(asked).size());
            }
        }
        Asked two = asked(2, 2, Signs.minus(0, 1), DIRECT, FIVE_COMPLEMENT);
        assertThat(RodCounts.of(two).orElseThrow().count().intValueExact())
                .isEqualTo(written(two).size());
    }

    @Test
    void everyColumnIsDrawnEquallyOften() {
        Asked asked = asked(3, 1, Signs.minus(0, 2), DIRECT, FIVE_COMPLEMENT);
        Map<String, Double> weights =
                written(asked).stream().collect(Collectors.toMap(one -> one, _ -> 1.0));

        Map<String, Integer> drawn =
                BruteForce.drawn(RodCounts.of(asked).orElseThrow(), asked, 200 * weights.size(), 1);

        assertThat(drawn).hasSameSizeAs(weights);
        assertThat(BruteForce.surprise(drawn, weights)).isBetween(-4.0, 4.0);
    }

    @Test
    void longColumnsAreWithinWhatIsAllowed() {
        Asked asked = asked(12, 9, Signs.minus(4).inRunsOf(2).endingPlus(), DIRECT);
        Source rods = RodCounts.of(asked).orElseThrow();
        Checks checks = new Checks(asked.conditions());
        Facts facts = asked.facts();
        var draws = new tamabako.problems.making.draw.Draws(3);
        for (int i = 0; i < 500; i++) {
            assertThat(rods.draw(draws, facts)).isTrue();
            assertThat(checks.areMet(facts)).isTrue();
            assertThat(asked.patterns().have(facts)).isTrue();
            assertThat(facts.totals().firstBelow()).isZero();
        }
    }

    @Test
    void columnsWithCarriesAreNotCountedLikeThis() {
        assertThat(RodCounts.of(asked(3, 1, Signs.PLUS, DIRECT, TEN_COMPLEMENT))).isEmpty();
    }

    private static List<String> written(Asked asked) {
        return BruteForce.all(asked.shape(), asked.signs(), asked.conditions());
    }

    private static Asked asked(int rows, int digits, Signs signs, Technique... allowed) {
        return Asked.of(
                new Shape(rows, new Lengths.Between(digits, digits), 0),
                signs,
                List.of(new OnlyTechniques(Set.of(allowed))));
    }
}
