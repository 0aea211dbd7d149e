package tamabako.problems.making.column;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tamabako.frame.Technique;
import tamabako.problems.making.column.DigitCondition.DigitsEach;
import tamabako.problems.making.column.DigitCondition.LeadsDiffer;
import tamabako.problems.making.column.HandCondition.TechniqueCount;
import tamabako.problems.making.column.TotalCondition.AnswerLength;
import tamabako.problems.making.column.TotalCondition.BelowZero;
import tamabako.problems.making.column.TotalCondition.Dips;
import tamabako.problems.making.draw.Draws;

class LeadColumnsTest {

    @Test
    void everyColumnOfTheSameLengthsIsDrawnEquallyOften() {
        for (List<Condition> conditions :
                List.of(
                        List.<Condition>of(
                                new DigitsEach(0, 1),
                                new LeadsDiffer(),
                                new AnswerLength(2, 2),
                                new BelowZero(Dips.NEVER)),
                        List.<Condition>of(new DigitsEach(0, 2)),
                        List.<Condition>of(new DigitsEach(0, 2), new LeadsDiffer()))) {
            for (Lengths lengths :
                    List.of(
                            new Lengths.Between(1, 2),
                            new Lengths.Table(List.of(2, 1)),
                            new Lengths.Total(3, 1, 2))) {
                assertEven(2, lengths, conditions);
            }
        }
    }

    @Test
    void leadsThatLeaveFewerWaysComeAsMuchSeldomer() {
        // With each digit at most twice, a digit that leads twice is used up.
        assertEven(
                3, new Lengths.Table(List.of(1, 1, 2)), List.<Condition>of(new DigitsEach(0, 2)));
    }

    @Test
    void columnsRichInTechniquesAreAsAsked() {
        List<Condition> conditions =
                new ArrayList<>(
                        List.of(
                                new DigitsEach(4, 6),
                                new LeadsDiffer(),
                                new BelowZero(Dips.NEVER)));
        for (Technique technique : Technique.values()) {
            conditions.add(new TechniqueCount(technique, 8, HandCondition.ANY));
        }
        Asked asked =
                Asked.of(new Shape(10, new Lengths.Between(4, 6), 0), Signs.minus(3), conditions);
        Source source = new Rejecting(source(asked), conditions);
        Facts facts = asked.facts();
        Draws draws = new Draws(5);
        int made = 0;
        while (made < 200) {
            if (source.draw(draws, facts)) {
                made++;
                for (Condition condition : conditions) {
                    assertThat(Judge.missed(condition, facts)).isEmpty();
                }
                assertThat(asked.patterns().have(facts)).isTrue();
            }
        }
    }

    @Test
    void manyRowsAndDigitsThatCannotComeAreLeftToOthers() {
        assertThat(LeadColumns.of(asked(15, 3, new DigitsEach(2, 8)), new DigitsEach(2, 8)))
                .isEmpty();
        assertThat(LeadColumns.of(asked(10, 3, new DigitsEach(0, 1)), new DigitsEach(0, 1)))
                .isEmpty();
    }

    /// Two digits lead twice each and one four times, so seven never lead.
    @Test
    void leadsAreToldApartByHowOftenTheyAre() {
        long leads = Leads.NONE;
        int[] times = new int[10];
        for (int lead : new int[] {3, 5, 3, 7, 7, 5, 7, 7}) {
            leads = Leads.with(leads, times[lead]++);
        }

        assertThat(Leads.digits(leads, 0)).isEqualTo(7);
        assertThat(Leads.digits(leads, 2)).isEqualTo(2);
        assertThat(Leads.digits(leads, 4)).isEqualTo(1);
        assertThat(Leads.most(leads)).isEqualTo(4);
        assertThat(Leads.all(8, 8)).contains(leads).doesNotHaveDuplicates();
        // The partitions of 8 are 22; of 10 into 9 parts at most, one less than 42.
        assertThat(Leads.all(8, 8)).hasSize(22);
        assertThat(Leads.all(10, 10)).hasSize(41);
        assertThat(Leads.all(8, 3)).doesNotContain(leads);
    }

    private static void assertEven(int rows, Lengths lengths, List<Condition> conditions) {
        Asked asked = Asked.of(new Shape(rows, lengths, 0), Signs.minus(0, 1), conditions);
        Map<String, Double> weights = new TreeMap<>();
        for (String column : BruteForce.all(asked.shape(), asked.signs(), conditions)) {
            long digits = column.chars().filter(Character::isDigit).count();
            weights.put(column, Math.pow(10, -(double) digits));
        }

        Map<String, Integer> drawn =
                BruteForce.drawn(new Rejecting(source(asked), conditions), asked, 200_000, 2);

        assertThat(weights).isNotEmpty().containsKeys(drawn.keySet().toArray(String[]::new));
        assertThat(BruteForce.surprise(drawn, weights))
                .as("%s %s", lengths, conditions)
                .isBetween(-4.0, 4.0);
    }

    private static Source source(Asked asked) {
        return LeadColumns.of(asked, asked.digitsEach().orElseThrow()).orElseThrow();
    }

    private static Asked asked(int rows, int digits, DigitsEach each) {
        return Asked.of(
                new Shape(rows, new Lengths.Between(digits, digits), 0),
                Signs.PLUS,
                List.of(each));
    }
}
