package tamabako.insight.mastery;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tamabako.insight.pooling.Manner;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.Habit;
import tamabako.insight.simulation.ProductPupil;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipKind;
import tamabako.problems.Attempt;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Terms;

/// The skills of multiplying and dividing, of pupils whose slips are known.
class SkillMasteryTest {

    private static BigDecimal number(long value) {
        return BigDecimal.valueOf(value);
    }

    private static PupilMastery told(MasteryTally tally) {
        return tally.told(MasteryPopulation.shipped().with(Forgetting.NONE), Demand.of(tally));
    }

    private static void add(MasteryTally tally, Problem problem, String answer) {
        MasteryAnswer.of(EventTable.of(problem), Attempt.of(problem, answer)).ifPresent(tally::add);
    }

    /// Products of a pupil who slips by `rates`.
    private static MasteryTally products(Rates rates, int count) {
        SplittableRandom chance = new SplittableRandom(8);
        MasteryTally tally = new MasteryTally(Manner.FRAME);
        for (int i = 0; i < count; i++) {
            long first = chance.nextLong(1_000, 10_000);
            long second = chance.nextLong(100, 1_000);
            Product product = new Product("1", number(first), number(second), Terms.PLAIN);
            ProductPupil.writes(first, second, Fate.by(rates, chance, Habit.NONE))
                    .ifPresent(written -> add(tally, product, Long.toString(written)));
        }
        return tally;
    }

    private static SkillMastery of(MasteryTally tally, Skill skill) {
        return told(tally).skills().stream()
                .filter(one -> one.skill() == skill)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whoseTableIsWeakHasNotMasteredTheTableYetWhileTheRestIsNotBlamed() {
        Rates weak = Rates.shipped().with(SlipKind.TABLE_SLIP, 0.04);
        MasteryTally tally = products(weak, 150);
        SkillMastery table = of(tally, Skill.TABLES);

        assertThat(table.statement()).isEqualTo(Statement.NOT_YET);
        // Ten times as often as usual; what pupils in general are like draws it toward them.
        assertThat(table.rate()).isBetween(5 * table.usual(), 11 * table.usual());
        assertThat(of(tally, Skill.PLACE_OF_PRODUCT).statement()).isNotEqualTo(Statement.NOT_YET);
    }

    @Test
    void whoMisplacesProductsIsToldApartFromWhoseTableIsWeak() {
        MasteryTally tally = products(Rates.shipped().with(SlipKind.PRODUCT_MISPLACED, 0.02), 150);

        assertThat(of(tally, Skill.PLACE_OF_PRODUCT).statement()).isEqualTo(Statement.NOT_YET);
        assertThat(of(tally, Skill.TABLES).statement()).isNotEqualTo(Statement.NOT_YET);
    }

    @Test
    void aSkillIsToldOfOnlyWhereItIsCalledFor() {
        MasteryTally columns = new MasteryTally(Manner.FRAME);
        add(columns, new Column("1", List.of(number(12), number(34)), Terms.PLAIN), "46");
        MasteryTally products = new MasteryTally(Manner.FRAME);
        add(products, new Product("1", number(23), number(45), Terms.PLAIN), "1035");
        MasteryTally quotients = new MasteryTally(Manner.FRAME);
        add(quotients, new Quotient("1", number(1_035), number(45), Terms.PLAIN), "23");

        assertThat(told(columns).skills()).isEmpty();
        assertThat(told(products).skills())
                .extracting(SkillMastery::skill)
                .containsExactly(Skill.TABLES, Skill.PLACE_OF_PRODUCT);
        assertThat(told(quotients).skills())
                .extracting(SkillMastery::skill)
                .containsExactly(Skill.TABLES, Skill.PLACE_OF_PRODUCT, Skill.TRIAL_DIGIT);
    }

    @Test
    void theAdditionsWithinAProductAreMovesOfTheHandAsInColumns() {
        // By hand, the last digit first: 7 x 8 = 56, then 6 x 8 = 48 one rod on. 5 and 6 go on
        // empty rods; 4 is put on an empty rod, and 8 on the 5 is adding over ten.
        MasteryTally tally = new MasteryTally(Manner.FRAME);
        add(tally, new Product("1", number(67), number(8), Terms.PLAIN), "536");

        assertThat(tally.steps(Move.ADD_TEN_COMPLEMENT) + tally.steps(Move.ADD_TEN_WITH_FIVE))
                .isEqualTo(1);
        assertThat(tally.steps(Move.TAKE_DIRECT)).isZero();
    }

    @Test
    void theSkillIsNamedInBothLanguages() {
        assertThat(MasteryWords.of(Locale.ENGLISH).name(Skill.TABLES))
                .isEqualTo("Multiplication table");
        assertThat(MasteryWords.of(Locale.JAPANESE).name(Skill.TABLES)).isEqualTo("九九");
    }
}
