package tamabako.problems.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static tamabako.frame.Technique.DIRECT;
import static tamabako.frame.Technique.TEN_COMPLEMENT;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tamabako.frame.Rounding;
import tamabako.frame.Setup;
import tamabako.frame.Step;
import tamabako.frame.Technique;
import tamabako.frame.Unworkable;
import tamabako.frame.Working;
import tamabako.problems.Column;
import tamabako.problems.PadLine;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Samples;
import tamabako.problems.Story;
import tamabako.problems.Terms;
import tamabako.problems.effort.StrokeTimes.Part;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.Made;
import tamabako.problems.making.Maker;
import tamabako.problems.making.ProductWish;
import tamabako.problems.making.QuotientWish;
import tamabako.problems.making.Wish;
import tamabako.problems.text.ProblemText;

class EffortTest {

    @Test
    void strokesMotionsAndTechniquesAreThoseOfTheTraces() {
        forSeeds(
                6000,
                draw -> {
                    Problem problem =
                            Samples.problem(draw, "", Terms.PLAIN.withPlaces(draw.between(0, 4)));
                    Working working;
                    try {
                        working = problem.work(Setup.COMMON);
                    } catch (Unworkable _) {
                        assertThatThrownBy(() -> Effort.of(problem)).isInstanceOf(Unworkable.class);
                        return;
                    }
                    List<Step> steps = steps(working);

                    Effort effort = Effort.of(problem);

                    assertThat(effort.motions())
                            .isEqualTo(steps.stream().mapToInt(s -> s.motions().size()).sum());
                    assertThat(effort.strokes())
                            .isEqualTo(steps.stream().mapToInt(s -> s.strokes().size()).sum());
                    for (Technique technique : Technique.values()) {
                        assertThat(effort.count(technique))
                                .isEqualTo(
                                        (int)
                                                steps.stream()
                                                        .filter(s -> s.technique() == technique)
                                                        .count());
                    }
                });
    }

    @Test
    void whatIsRecalledAndTriedIsThatOfTheTraces() {
        forSeeds(
                2000,
                draw -> {
                    BigDecimal dividend = draw.decimal(draw.length(9), draw.between(0, 3));
                    BigDecimal divisor = draw.decimal(draw.length(6), draw.between(0, 3));
                    Terms terms =
                            Terms.PLAIN
                                    .withPlaces(3)
                                    .withRounding(draw.oneOf(List.of(Rounding.values())));
                    for (Problem problem :
                            List.of(
                                    new Product("", dividend, divisor, terms),
                                    new Quotient("", dividend, divisor, terms))) {
                        HandCount fast = HandCount.of(problem);
                        HandCount traced = TraceCount.of(problem);
                        assertThat(fast.trials()).isEqualTo(traced.trials());
                        assertThat(fast.revisions()).isEqualTo(traced.revisions());
                        assertThat(fast.firstRevisions()).isEqualTo(traced.firstRevisions());
                        assertThat(fast.products()).isEqualTo(traced.products());
                    }
                });
    }

    @Test
    void theFirstTrialDigitOfTheHandbooksDivisionIsRevisedOnce() {
        // 84 by 28: try 4, then 3. Source: Using an Abacus, Wikibooks, modern division.
        assertThat(Effort.firstRevisions(quotient("84", "28"))).isEqualTo(1);
        assertThat(Effort.firstRevisions(quotient("84", "21"))).isZero();
    }

    @Test
    void aCarriedSumIsCountedAsTheFingersMakeIt() {
        Effort effort = Effort.of(ProblemText.parse("34 + 78"));

        assertThat(effort.strokes()).isEqualTo(6);
        assertThat(effort.techniques()).isEqualTo(Map.of(DIRECT, 4, TEN_COMPLEMENT, 2));
        assertThat(effort.steps()).isEqualTo(6);
    }

    @Test
    void aTimeIsTheSumOfItsParts() {
        // 2 + 1: two direct steps of one motion each, two numbers, one digit written.
        double expected =
                part(Part.PROBLEM)
                        + 2 * part(Part.NUMBER)
                        + 2 * part(Part.MOTION)
                        + 2 * StrokeTimes.USUAL.steps().getOrDefault(DIRECT, 0.0)
                        + part(Part.WRITTEN);
        Problem sum = ProblemText.parse("2 + 1");

        assertThat(Effort.of(sum).seconds()).isCloseTo(expected, within(1e-9));
        assertThat(Effort.of(sum, StrokeTimes.USUAL.scaled(3)).seconds())
                .isCloseTo(3 * expected, within(1e-9));
        Column pad =
                new Column(
                        "",
                        List.of(BigDecimal.TWO, BigDecimal.ONE),
                        Terms.PLAIN.withTold(new PadLine(1, 1, 2)));
        assertThat(Effort.of(pad).seconds()).isCloseTo(expected + part(Part.LEAF), within(1e-9));
    }

    @Test
    void theEarlierSumsOfAStoryCount() {
        Problem earlier = ProblemText.parse("120 + 80");
        Story story = new Story(Map.of("en", "Three times 120 and 80 yen."), List.of(earlier));
        Product plain = new Product("", new BigDecimal("200"), new BigDecimal("3"), Terms.PLAIN);
        Product told =
                new Product(
                        "", plain.multiplicand(), plain.multiplier(), Terms.PLAIN.withTold(story));

        assertThat(Effort.of(told).strokes())
                .isEqualTo(Effort.of(plain).strokes() + Effort.of(earlier).strokes());
        assertThat(Effort.of(told).seconds())
                .isCloseTo(
                        Effort.of(List.of(plain, earlier)).seconds() + part(Part.STORY),
                        within(1e-9));
    }

    @Test
    void theUsualPupilFinishesAThirdGradePaperInItsThirtyMinutesAndNotMuchSooner() {
        // 10 columns of 6 digits and 10 rows, 20 products of 7 digits, 20 quotients of 6. Source:
        // JCCI, shuzan.jp/kentei/shuzan.
        List<Problem> paper =
                Stream.of(
                                made(ColumnWish.of(10, 6).withMinusRows(3), 10),
                                made(new ProductWish(4, 3), 20),
                                made(new QuotientWish(3, 3), 20))
                        .flatMap(List::stream)
                        .toList();

        assertThat(Effort.of(paper).seconds() / 60).isBetween(22.0, 29.0);
    }

    @Test
    void timesAreWholeAndAboveZero() {
        assertThatThrownBy(() -> new StrokeTimes(Map.of(), StrokeTimes.USUAL.steps()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> StrokeTimes.USUAL.scaled(0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(StrokeTimes.USUAL.parts().values()).allMatch(seconds -> seconds > 0);
    }

    @Test
    void whatCannotBeWorkedHasNoEffort() {
        Product below = new Product("", new BigDecimal("-2"), BigDecimal.TWO, Terms.PLAIN);

        assertThatThrownBy(() -> Effort.of(below)).isInstanceOf(Unworkable.class);
        assertThat(Effort.of(List.of())).isEqualTo(Effort.NONE);
    }

    private static List<Step> steps(Working working) {
        List<Step> steps = new ArrayList<>(working.setting().steps());
        steps.addAll(working.trace().steps());
        return steps;
    }

    private static Quotient quotient(String dividend, String divisor) {
        return new Quotient("", new BigDecimal(dividend), new BigDecimal(divisor), Terms.PLAIN);
    }

    private static double part(Part part) {
        return StrokeTimes.USUAL.parts().getOrDefault(part, 0.0);
    }

    private static List<Problem> made(Wish wish, int count) {
        return ((Made.Found) Maker.make(wish, count, 1)).problems();
    }
}
