package tamabako.insight.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;

/// Rasch's model against eRm, psychotools and lme4.
class RaschTest {

    static AnswerSums verbalAggression() {
        return new AnswerSums(
                Table.read("verbagg-rasch").wholes("n_yes"),
                Table.read("verbagg-scores").wholes("persons"));
    }

    static List<Double> values(List<Estimate> estimates) {
        return estimates.stream().map(Estimate::value).toList();
    }

    static List<Double> errors(List<Estimate> estimates) {
        return estimates.stream().map(Estimate::standardError).toList();
    }

    static List<Double> negated(List<Double> numbers) {
        return numbers.stream().map(x -> -x).toList();
    }

    @Test
    void theSymmetricFunctionsOfTenTermsAreThoseOfPsychotools() {
        double[] difficulties = {-2, -1.5, -1, -.5, 0, .25, .5, 1, 1.5, 2};
        List<Binary64> terms = new ArrayList<>();
        for (double difficulty : difficulties) {
            terms.add(new Binary64(Math.exp(-difficulty)));
        }

        List<Double> found = SymmetricFunctions.of(terms).stream().map(Binary64::getReal).toList();

        Largest.shareBetween(found, Table.read("elementary-symmetric").numbers("gamma_r"))
                .isAtMost(1e-12);
    }

    @Test
    void theDifficultiesOfVerbalAggressionWhoeverAnsweredAreThoseOfErm() {
        Table expected = Table.read("verbagg-rasch");

        Difficulties found = ConditionalRasch.each(verbalAggression()).orElseThrow();

        Largest.between(found.values(), expected.numbers("cml_difficulty_sum0")).isAtMost(1e-3);
        Largest.between(errors(found.problems()), expected.numbers("cml_se")).isAtMost(1e-3);
        assertThat(found.logLikelihood()).isCloseTo(-3049.922639, within(1e-3));
    }

    @Test
    void theDifficultiesOfVerbalAggressionWithNormalAbilitiesAreThoseOfLme4() {
        Table expected = Table.read("verbagg-rasch");
        Table lltm = Table.read("verbagg-lltm");

        MarginalRasch.Fit found = MarginalRasch.each(verbalAggression()).orElseThrow();

        List<Double> easiness = negated(found.difficulties().values());
        Largest.between(easiness, expected.numbers("mml_easiness_agq25")).isAtMost(1e-3);
        Largest.between(errors(found.difficulties().problems()), expected.numbers("mml_se"))
                .isAtMost(1e-3);
        assertThat(found.spread().value())
                .isCloseTo(
                        lltm.where("term", "Rasch-AGQ25").where("model", "sd_person").number("est"),
                        within(1e-3));
        assertThat(found.difficulties().logLikelihood())
                .isCloseTo(
                        lltm.where("term", "Rasch-AGQ25").where("model", "logLik").number("est"),
                        within(1e-3));
    }

    @Test
    void abilitiesAndTheirErrorsAreThoseOfErm() {
        Table expected = Table.read("verbagg-person");
        List<Double> difficulties =
                ConditionalRasch.each(verbalAggression()).orElseThrow().values();

        List<Estimate> found =
                expected.wholes("score").stream()
                        .map(score -> RaschAbility.of(difficulties, score).orElseThrow())
                        .toList();

        Largest.between(values(found), expected.numbers("theta_ml")).isAtMost(1e-4);
        List<Double> errors = errors(found);
        Largest.between(errors.subList(0, 22), expected.numbers("se").subList(0, 22))
                .isAtMost(1e-4);
        // eRm takes its errors from differences, which shows in the steep last one; in R too the
        // information of eRm's difficulties at eRm's ability gives the error found here.
        assertThat(errors.getLast()).isCloseTo(1.070352065, within(2e-4));
        assertThat(errors.getLast()).isCloseTo(1.0701996, within(2e-6));
    }

    @Test
    void allOrNothingRightHasNoAbilityOfGreatestLikelihood() {
        assertThat(RaschAbility.of(List.of(-1.0, 1.0), 0)).isEmpty();
        assertThat(RaschAbility.of(List.of(-1.0, 1.0), 2)).isEmpty();
    }

    @Test
    void theDifficultiesOfErmsOwnExampleAreThoseOfErm() {
        Table expected = Table.read("raschdat1");
        AnswerSums sums =
                new AnswerSums(
                        expected.wholes("right"), Table.read("raschdat1-scores").wholes("persons"));

        Difficulties found = ConditionalRasch.each(sums).orElseThrow();

        Largest.between(found.values(), expected.numbers("difficulty")).isAtMost(1e-4);
        Largest.between(errors(found.problems()), expected.numbers("se")).isAtMost(1e-4);
        assertThat(found.logLikelihood()).isCloseTo(-1434.482, within(1e-3));
    }

    @Test
    void theDifficultiesOfAMathematicsExaminationAreThoseOfPsychotools() {
        Table expected = Table.read("mathexam-rasch");
        AnswerSums sums =
                new AnswerSums(
                        expected.wholes("right"), Table.read("mathexam-scores").wholes("persons"));

        Difficulties found = ConditionalRasch.each(sums).orElseThrow();

        Largest.between(found.values(), expected.numbers("difficulty")).isAtMost(1e-4);
        Largest.between(errors(found.problems()), expected.numbers("se")).isAtMost(1e-4);
        assertThat(found.logLikelihood()).isCloseTo(-3635.234, within(1e-3));
    }

    @Test
    void aProblemThatEverybodyHasRightHasNoDifficulty() {
        AnswerSums sums = new AnswerSums(List.of(3, 1, 2), List.of(0, 1, 1, 1));

        assertThat(ConditionalRasch.each(sums)).isEmpty();
    }

    @Test
    void featuresThatComeToTheSameInAllProblemsHaveNoEffectGivenTheScore() {
        Features same = Features.of(List.of(List.of(1.0), List.of(1.0), List.of(1.0)));
        AnswerSums sums = new AnswerSums(List.of(2, 1, 1), List.of(1, 2, 1, 0));

        assertThat(ConditionalRasch.by(same, sums)).isEmpty();
    }

    @Test
    void answersAreSummedByProblemAndByPerson() {
        AnswerSums sums =
                AnswerSums.of(
                        List.of(List.of(true, false), List.of(true, true), List.of(true, false)));

        assertThat(sums).isEqualTo(new AnswerSums(List.of(3, 1), List.of(0, 2, 1)));
    }

    @Test
    void sumsThatContradictEachOtherAreRefused() {
        assertThatThrownBy(() -> new AnswerSums(List.of(1, 1), List.of(0, 1, 1)))
                .hasMessage("The problems have 2 right answers, the persons 3.");
    }
}
