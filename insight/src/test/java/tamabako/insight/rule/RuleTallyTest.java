package tamabako.insight.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.Habit;
import tamabako.insight.slip.ColumnAnswer;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Rates;
import tamabako.problems.Column;
import tamabako.problems.Terms;
import tamabako.testkit.Draw;

class RuleTallyTest {

    private static final Rates RATES = Rates.shipped();

    /// Anchor: simulation for this project names the rule in .98 after five wrong answers to
    /// columns of ten rows of five digits, where it is followed six times in ten.
    @Test
    void aRuleFollowedSixTimesInTenIsNamedAfterFiveWrongAnswers() {
        int[] named = new int[2];
        forSeeds(
                40,
                draw -> {
                    LastingRule rule = draw.oneOf(LastingRule.known());
                    LastingRules found = answers(draw, RuleWalkTest.habit(rule, 0.6), 5, 80);
                    named[0]++;
                    named[1] += found.likeliest().getFirst().rule().equals(rule) ? 1 : 0;
                });

        assertThat(named[1]).isGreaterThanOrEqualTo(36);
    }

    @Test
    void aPupilWithoutARuleIsHardlyEverSaidToHaveOne() {
        int[] found = new int[1];
        forSeeds(40, draw -> found[0] += answers(draw, Habit.NONE, 5, 40).found() ? 1 : 0);

        assertThat(found[0]).isLessThanOrEqualTo(2);
    }

    @Test
    void oneWrongAnswerDoesNotMakeARule() {
        LastingRules rules = new RuleTally().rules(RATES, RATES);
        assertThat(rules.none()).isBetween(0.29, 0.31);
        assertThat(rules.likeliest()).isEmpty();

        RuleTally tally = new RuleTally();
        tally.add(evidence(List.of(12L, -4L), 6));
        assertThat(tally.rules(RATES, RATES).found()).isFalse();
    }

    /// "Many answers off by 2" are a teacher's sign for 4 taken by its own 4.
    @Test
    void manyAnswersTwoTooSmallAreFourTakenByItself() {
        RuleTally tally = new RuleTally();
        tally.add(evidence(List.of(12L, -4L), 6));
        tally.add(evidence(List.of(31L, -4L), 25));
        tally.add(evidence(List.of(53L, -4L), 47));
        tally.add(evidence(List.of(25L, 12L), 37));

        LastingRules rules = tally.rules(RATES, RATES);

        assertThat(rules.found()).isTrue();
        assertThat(rules.likeliest().getFirst().rule())
                .isEqualTo(RuleWalkTest.rule("take-ten-complement-4-by-4"));
        assertThat(rules.likeliest().getFirst().followed()).isGreaterThan(0.7);
    }

    @Test
    void mentalWorkAndTotalsBelowZeroSayNothingAboutBeads() {
        assertThat(ColumnAnswer.of(EventTable.of(column(List.of(3L, -5L))), "2")).isEmpty();
        assertThat(ColumnAnswer.of(EventTable.of(column(List.of(3L, 5L))), "no")).isEmpty();
        assertThat(ColumnAnswer.of(EventTable.of(column(List.of(3L, 5L))), "8")).isPresent();
    }

    private static LastingRules answers(Draw draw, Habit habit, int wrong, int most) {
        RuleTally tally = new RuleTally();
        SplittableRandom chance = new SplittableRandom(draw.bits());
        int left = wrong;
        for (int i = 0; i < most && left > 0; i++) {
            List<Long> rows = RuleWalkTest.rows(draw, 10, 5);
            Rates half = RATES.with(kind -> RATES.of(kind) / 2);
            OptionalLong written = ColumnPupil.writes(rows, Fate.by(half, chance, habit));
            if (written.isPresent()) {
                tally.add(evidence(rows, written.getAsLong()));
                left -= written.getAsLong() == rows.stream().mapToLong(r -> r).sum() ? 0 : 1;
            }
        }
        return tally.rules(RATES, RATES);
    }

    private static RuleEvidence evidence(List<Long> rows, long written) {
        EventTable table = EventTable.of(column(rows));
        return RuleEvidence.of(ColumnAnswer.of(table, Long.toString(written)).orElseThrow(), RATES);
    }

    private static Column column(List<Long> rows) {
        return new Column("1", rows.stream().map(BigDecimal::valueOf).toList(), Terms.PLAIN);
    }
}
