package tamabako.insight.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tamabako.insight.mastery.Demand;
import tamabako.insight.mastery.MasteryAnswer;
import tamabako.insight.mastery.MasteryPopulation;
import tamabako.insight.mastery.MasteryTally;
import tamabako.insight.mastery.SlipPosterior;
import tamabako.insight.plan.NextPractice.Reason;
import tamabako.insight.plan.NextPractice.Why;
import tamabako.insight.pooling.Manner;
import tamabako.insight.readiness.Field;
import tamabako.insight.readiness.Forecast;
import tamabako.insight.readiness.Outline;
import tamabako.insight.readiness.Readiness;
import tamabako.insight.readiness.Standing;
import tamabako.insight.readiness.Variety;
import tamabako.insight.readiness.Worked;
import tamabako.insight.slip.EventTables;
import tamabako.insight.slip.Move;
import tamabako.problems.Attempt;
import tamabako.problems.Problem;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.file.Ladders;
import tamabako.problems.text.ProblemText;
import tamabako.testkit.Golden;

/// Plans for a grade that is shipped.
class PlannerTest {

    private static final String LADDER = "abacus-one-sheet";
    private static final EventTables TABLES = new EventTables();
    private static final Grade GRADE =
            Ladders.ladder(LADDER).orElseThrow().grade("8").orElseThrow();
    private static final Outline OUTLINE = Outline.of(LADDER, GRADE, TABLES).orElseThrow();
    private static final Planner PLANNER = Planner.of(Exercises.of(LADDER, GRADE, TABLES));

    private static SlipPosterior posterior(MasteryTally tally) {
        return tally.told(MasteryPopulation.shipped(), Demand.of(tally)).posterior();
    }

    /// What is known of a pupil who forgets every second carry where ten is passed with the five:
    /// 25 + 36 = 51.
    private static Lacks lacks(int answers) {
        MasteryTally frame = new MasteryTally(Manner.FRAME);
        for (int i = 0; i < answers; i++) {
            int first = 15 + 10 * (i % 4);
            int second = 16 + 10 * (i % 3) + i % 3;
            Problem problem = ProblemText.parse(first + " + " + second);
            int written = first + second - (i % 2 == 0 ? 10 : 0);
            MasteryAnswer.of(TABLES.of(problem), Attempt.of(problem, Integer.toString(written)))
                    .ifPresent(frame::add);
        }
        return Lacks.of(
                posterior(frame),
                posterior(new MasteryTally(Manner.MIND)),
                new Practised(),
                Learning.USUAL);
    }

    private static Readiness readiness(int answers) {
        List<Worked> worked = new ArrayList<>();
        for (Outline.Part part : OUTLINE.parts()) {
            for (int i = 0; i < answers; i++) {
                worked.add(worked(part.field(), part.slips(), i % 6 != 0));
            }
        }
        return Forecast.PLAIN.of(Standing.of(worked, Variety.USUAL), OUTLINE);
    }

    private static Worked worked(Field field, double slips, boolean right) {
        return new Worked(field, slips, right, OptionalDouble.of(0.2), OptionalLong.empty());
    }

    private static PlanWish wish(int count, long seed) {
        return new PlanWish(count, OptionalInt.of(40), Set.of(), seed);
    }

    @Test
    void theSameSeedMakesTheSamePlanAndAnotherMakesOtherProblems() {
        NextPractice plan = PLANNER.plan(lacks(20), readiness(30), wish(12, 7));

        assertThat(plan.items()).hasSize(12);
        assertThat(PLANNER.plan(lacks(20), readiness(30), wish(12, 7))).isEqualTo(plan);
        assertThat(PLANNER.plan(lacks(20), readiness(30), wish(12, 8)).problems())
                .isNotEqualTo(plan.problems());
    }

    @Test
    void problemsAreNumberedAndNoneStandsTwiceOrIsOneToBeAvoided() {
        NextPractice plan = PLANNER.plan(lacks(20), readiness(30), wish(24, 7));
        Set<Problem> seen = new HashSet<>();
        for (int i = 0; i < plan.items().size(); i++) {
            Problem problem = plan.problems().get(i);
            assertThat(problem.id()).isEqualTo(Integer.toString(i + 1));
            assertThat(seen.add(problem.withId(""))).isTrue();
        }
        PlanWish again = new PlanWish(24, OptionalInt.empty(), seen, 7);
        for (Problem problem : PLANNER.plan(lacks(20), readiness(30), again).problems()) {
            assertThat(seen).doesNotContain(problem.withId(""));
        }
    }

    @Test
    void everySectionIsMetAndAQuarterIsAsInTheExam() {
        NextPractice plan = PLANNER.plan(lacks(20), readiness(30), wish(24, 7));

        assertThat(plan.items().stream().map(NextPractice.Item::section))
                .contains("columns", "products", "quotients");
        assertThat(plan.items().stream().filter(item -> item.focus().isAsInExam()).count())
                .isGreaterThanOrEqualTo(6);
    }

    @Test
    void theMoveThatGoesWrongIsDrilledMoreThanAnyOther() {
        NextPractice plan = PLANNER.plan(lacks(80), readiness(30), wish(40, 7));
        Focus wrong = new Focus.OfMove(Move.ADD_TEN_WITH_FIVE);
        long drilled = plan.items().stream().filter(item -> item.focus().equals(wrong)).count();

        for (Move move : Move.values()) {
            Focus other = new Focus.OfMove(move);
            assertThat(plan.items().stream().filter(item -> item.focus().equals(other)).count())
                    .isLessThanOrEqualTo(drilled);
        }
        assertThat(drilled).isPositive();
    }

    @Test
    void whileTooLittleIsKnownItIsFoundOut() {
        NextPractice plan = PLANNER.plan(lacks(0), readiness(3), wish(9, 7));

        assertThat(plan.items()).hasSize(9).allMatch(item -> item.focus().isAsInExam());
        assertThat(plan.reasons()).allMatch(reason -> reason.why() == Why.TO_FIND_OUT);
    }

    @Test
    void reviewsStandAtEqualGapsOfATenthToAFifthOfTheDays() {
        List<Integer> reviews = PLANNER.plan(lacks(20), readiness(30), wish(6, 7)).reviews();

        assertThat(reviews).isNotEmpty();
        int gap = reviews.getFirst();
        assertThat(gap).isBetween(4, 8);
        for (int i = 0; i < reviews.size(); i++) {
            assertThat(reviews.get(i)).isEqualTo(gap * (i + 1)).isLessThan(40);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "ja"})
    void reasonsAreSaidInSentences(String language) {
        PlanWords words = PlanWords.of(Locale.of(language));
        StringBuilder said = new StringBuilder();
        for (NextPractice plan :
                List.of(
                        PLANNER.plan(lacks(20), readiness(30), wish(16, 7)),
                        PLANNER.plan(lacks(0), readiness(3), wish(4, 7)))) {
            for (Reason reason : plan.reasons()) {
                said.append(words.say(reason, GRADE)).append('\n');
            }
            said.append('\n');
        }

        assertThat(said.toString()).doesNotContain("{", "}");
        Golden.assertGolden("plan." + language + ".txt", said.toString());
    }
}
