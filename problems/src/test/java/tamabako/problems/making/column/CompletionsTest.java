package tamabako.problems.making.column;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.frame.Technique.DIRECT;
import static tamabako.frame.Technique.TEN_COMPLEMENT;
import static tamabako.testkit.Property.forSeeds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tamabako.frame.Technique;
import tamabako.problems.making.column.HandCondition.OnlyTechniques;
import tamabako.problems.making.column.HandCondition.TechniqueCount;
import tamabako.problems.making.column.TotalCondition.BelowZero;
import tamabako.problems.making.column.TotalCondition.Dips;
import tamabako.testkit.Draw;

class CompletionsTest {

    @Test
    void theListedColumnsAreAllThatAreAsAsked() {
        forSeeds(
                60,
                draw -> {
                    Asked asked = small(draw);

                    Completions counts = Completions.of(asked, 1_000_000).orElseThrow();

                    List<String> written =
                            BruteForce.all(asked.shape(), asked.signs(), asked.conditions());
                    assertThat(counts.weight().intValueExact()).isEqualTo(written.size());
                    assertThat(counts.all(asked.shape().rows(), 100_000))
                            .extracting(Arrays::toString)
                            .containsExactlyInAnyOrderElementsOf(written);
                    assertThat(DeadEnds.look(asked, 1_000_000))
                            .isEqualTo(
                                    written.isEmpty()
                                            ? DeadEnds.Finding.NO_COLUMN
                                            : DeadEnds.Finding.A_COLUMN);
                });
    }

    @Test
    void everyChoiceOfLengthsIsEquallyLikely() {
        Asked asked =
                asked(
                        new Shape(2, new Lengths.Between(1, 2), 0),
                        Signs.minus(0, 1),
                        new OnlyTechniques(Set.of(DIRECT, TEN_COMPLEMENT)));
        Map<String, Double> weights = new TreeMap<>();
        for (String column : BruteForce.all(asked.shape(), asked.signs(), asked.conditions())) {
            long digits = column.chars().filter(Character::isDigit).count();
            weights.put(column, Math.pow(10, -(double) digits));
        }

        Map<String, Integer> drawn =
                BruteForce.drawn(Completions.of(asked, 1_000_000).orElseThrow(), asked, 400_000, 5);

        assertThat(BruteForce.surprise(drawn, weights)).isBetween(-4.0, 4.0);
    }

    @Test
    void tooMuchWorkIsNotBegun() {
        Asked asked =
                asked(
                        new Shape(10, new Lengths.Between(3, 3), 0),
                        Signs.minus(3),
                        new OnlyTechniques(Set.of(DIRECT, TEN_COMPLEMENT)));

        assertThat(Completions.of(asked, 1000)).isEmpty();
        assertThat(DeadEnds.look(asked, 10)).isEqualTo(DeadEnds.Finding.GAVE_UP);
    }

    private static Asked small(Draw draw) {
        int rows = draw.between(2, 3);
        Set<Technique> allowed = EnumSet.of(draw.oneOf(List.of(Technique.values())));
        Set<Technique> required = EnumSet.noneOf(Technique.class);
        for (Technique technique : Technique.values()) {
            if (draw.chance(1, 2)) {
                allowed.add(technique);
            }
            if (allowed.contains(technique) && draw.chance(1, 3)) {
                required.add(technique);
            }
        }
        List<Condition> conditions = new ArrayList<>();
        conditions.add(new OnlyTechniques(allowed));
        required.forEach(one -> conditions.add(new TechniqueCount(one, 1, HandCondition.ANY)));
        int least = draw.between(0, rows - 1);
        Signs signs =
                new Signs(
                        least,
                        draw.between(least, rows - 1),
                        draw.chance(1, 2),
                        draw.between(1, 2));
        return asked(
                new Shape(rows, new Lengths.Between(1, 1), 0),
                signs,
                conditions.toArray(Condition[]::new));
    }

    private static Asked asked(Shape shape, Signs signs, Condition... conditions) {
        List<Condition> all = new ArrayList<>(List.of(conditions));
        all.add(new BelowZero(Dips.NEVER));
        return Asked.of(shape, signs, all);
    }
}
