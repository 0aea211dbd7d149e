package tamabako.problems.making.column;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tamabako.problems.making.column.DigitCondition.DigitsEach;
import tamabako.problems.making.column.DigitCondition.LeadsDiffer;
import tamabako.problems.making.column.TotalCondition.AnswerLength;
import tamabako.problems.making.column.TotalCondition.BelowZero;
import tamabako.problems.making.column.TotalCondition.Dips;
import tamabako.problems.making.draw.Draws;

class BagColumnsTest {

    @Test
    void everyColumnOfTheSameLengthsIsDrawnEquallyOften() {
        List<Condition> conditions =
                List.of(
                        new DigitsEach(0, 1),
                        new LeadsDiffer(),
                        new AnswerLength(2, 2),
                        new BelowZero(Dips.NEVER));
        for (Lengths lengths :
                List.of(
                        new Lengths.Between(1, 2),
                        new Lengths.Table(List.of(2, 1)),
                        new Lengths.Total(3, 1, 2))) {
            Asked asked = Asked.of(new Shape(2, lengths, 0), Signs.minus(0, 1), conditions);
            Map<String, Double> weights = new TreeMap<>();
            for (String column : BruteForce.all(asked.shape(), asked.signs(), conditions)) {
                long digits = column.chars().filter(Character::isDigit).count();
                weights.put(column, Math.pow(10, -(double) digits));
            }
            Source bags =
                    new Rejecting(
                            BagColumns.of(asked, new Bags(asked, new DigitsEach(0, 1))),
                            conditions);

            Map<String, Integer> drawn = BruteForce.drawn(bags, asked, 300_000, 2);

            assertThat(weights).isNotEmpty().containsKeys(drawn.keySet().toArray(String[]::new));
            assertThat(BruteForce.surprise(drawn, weights)).as("%s", lengths).isBetween(-4.0, 4.0);
        }
    }

    @Test
    void aHundredDigitsAreBalancedExactly() {
        List<Condition> conditions =
                List.of(
                        new DigitsEach(10, 10),
                        new AnswerLength(10, 10),
                        new BelowZero(Dips.NEVER));
        Asked asked =
                Asked.of(new Shape(10, new Lengths.Between(10, 10), 0), Signs.minus(4), conditions);
        Source bags =
                new Rejecting(
                        BagColumns.of(asked, new Bags(asked, new DigitsEach(10, 10))), conditions);
        Facts facts = asked.facts();
        Draws draws = new Draws(4);
        int made = 0;
        while (made < 200) {
            if (bags.draw(draws, facts)) {
                String digits = BruteForce.text(facts).replaceAll("[^0-9]", "");
                assertThat(digits).hasSize(100);
                for (char digit = '0'; digit <= '9'; digit++) {
                    char one = digit;
                    assertThat(digits.chars().filter(c -> c == one).count()).isEqualTo(10);
                }
                made++;
            }
        }
    }

    @Test
    void digitsThatCannotBeBalancedAreKnown() {
        Asked asked = Asked.of(new Shape(3, new Lengths.Between(3, 3), 0), Signs.PLUS, List.of());

        assertThat(new Bags(asked, new DigitsEach(1, 1)).any()).isFalse();
        assertThat(new Bags(asked, new DigitsEach(0, 1)).any()).isTrue();
        // Three zeros each, and only two places of a row of three are no lead.
        assertThat(new Bags(asked, new DigitsEach(7, 9)).any()).isFalse();
    }
}
