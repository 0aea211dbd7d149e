package tamabako.insight.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tamabako.testkit.Property.forSeeds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.Habit;
import tamabako.insight.slip.Rates;
import tamabako.testkit.Draw;

class RuleWalkTest {

    private static final Rates HARDLY_EVER = Rates.shipped().with(_ -> 1e-12);

    @Test
    void thereAreTheRulesOfBothComplementsAndOfCarriesEachOnce() {
        List<LastingRule> rules = LastingRule.known();

        assertThat(new HashSet<>(rules)).hasSameSizeAs(rules).hasSize(118);
        assertThat(rules.stream().map(LastingRule::word).distinct()).hasSameSizeAs(rules);
        assertThat(rules)
                .extracting(LastingRule::word)
                .contains(
                        "add-ten-complement-6-by-6",
                        "take-ten-complement-4-by-0",
                        "take-ten-complement-7-reversed",
                        "add-five-complement-3-by-0",
                        "add-five-bead-3",
                        "take-carry",
                        "add-running-carry");
    }

    /// Tochio's rule for 4: take 10, put back 6. A pupil who puts back 4 turns 12 - 4 into 6.
    @Test
    void takingFourByItselfIsTwoTooSmall() {
        LastingRule rule = rule("take-ten-complement-4-by-4");

        Ways ways = RuleWalk.of(rule, new long[] {12, -4});

        assertThat(totals(ways)).containsExactlyInAnyOrder(6L, 8L);
    }

    /// Always followed, a rule leads a pupil, worked bead by bead apart from the walk, to the way
    /// that never refuses it.
    @Test
    void aPupilWhoAlwaysFollowsTheRuleEndsOnTheWayThatNeverRefusesIt() {
        forSeeds(
                3_000,
                draw -> {
                    LastingRule rule = draw.oneOf(LastingRule.known());
                    List<Long> rows = rows(draw, draw.between(2, 6), draw.between(1, 4));
                    Ways ways = RuleWalk.of(rule, array(rows));
                    Fate fate = Fate.by(HARDLY_EVER, new SplittableRandom(1), habit(rule, 1));

                    OptionalLong written = ColumnPupil.writes(rows, fate);

                    Set<Long> always = new HashSet<>();
                    for (int i = 0; i < ways.size(); i++) {
                        if (ways.refused(i) == 0) {
                            always.add(ways.total(i));
                        }
                    }
                    if (written.isPresent()) {
                        assertThat(always)
                                .as(rule + " " + rows)
                                .containsExactly(written.getAsLong());
                    }
                });
    }

    @Test
    void theChancesOfAllWaysSumToOneWhereNoneEnds() {
        forSeeds(
                500,
                draw -> {
                    LastingRule rule = draw.oneOf(LastingRule.known());
                    List<Long> rows = new ArrayList<>();
                    for (int i = 0; i < 4; i++) {
                        rows.add(draw.whole(3).longValueExact());
                    }
                    Ways ways = RuleWalk.of(rule, array(rows));

                    for (int value = 0; value < Following.values(); value++) {
                        double sum = 0;
                        for (int i = 0; i < ways.size(); i++) {
                            sum +=
                                    ways.times(i)
                                            * Following.chance(
                                                    value, ways.followed(i), ways.refused(i));
                        }
                        assertThat(sum).as(rule + " " + rows).isCloseTo(1, within(1e-9));
                    }
                    assertThat(totals(ways)).contains(rows.stream().mapToLong(i -> i).sum());
                });
    }

    static LastingRule rule(String word) {
        return LastingRule.known().stream()
                .filter(rule -> rule.word().equals(word))
                .findFirst()
                .orElseThrow();
    }

    static Habit habit(LastingRule rule, double followed) {
        return new Habit(
                Habit.Part.valueOf(rule.part().name()),
                rule.adding(),
                rule.digit(),
                rule.used(),
                followed);
    }

    static List<Long> rows(Draw draw, int count, int digits) {
        List<Long> rows = new ArrayList<>();
        long total = 0;
        for (int i = 0; i < count; i++) {
            long row = draw.whole(digits).longValueExact();
            row = draw.chance(3, 10) && total >= row ? -row : row;
            total += row;
            rows.add(row);
        }
        return rows;
    }

    private static long[] array(List<Long> rows) {
        return rows.stream().mapToLong(Long::longValue).toArray();
    }

    private static List<Long> totals(Ways ways) {
        long[] totals = new long[ways.size()];
        Arrays.setAll(totals, ways::total);
        return Arrays.stream(totals).boxed().toList();
    }
}
