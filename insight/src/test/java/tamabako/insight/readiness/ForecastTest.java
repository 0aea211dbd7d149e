package tamabako.insight.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tamabako.problems.grade.Label;
import tamabako.problems.grade.Pass;
import tamabako.testkit.Golden;

/// Forecasts against pupils drawn one by one, against plain integration, and in words.
class ForecastTest {

    private static final List<Worked> NOTHING = List.of();

    private static Readiness told(Standing standing, Outline outline) {
        return Forecast.PLAIN.of(standing, outline);
    }

    /// Draws pupils of whom nothing is known and lets each sit the paper once.
    private static double passed(Outline outline, int pupils) {
        SplittableRandom random = new SplittableRandom(7);
        Variety variety = Variety.USUAL;
        int passed = 0;
        for (int i = 0; i < pupils; i++) {
            double slips =
                    variety.slips().shared() * random.nextGaussian()
                            + variety.slips().day() * random.nextGaussian();
            double pace =
                    variety.pace().shared() * random.nextGaussian()
                            + variety.pace().day() * random.nextGaussian();
            passed += sit(outline, variety, slips, pace, random) ? 1 : 0;
        }
        return (double) passed / pupils;
    }

    private static boolean sit(
            Outline outline, Variety variety, double slips, double pace, SplittableRandom random) {
        double clock = 0;
        int whole = 0;
        boolean each = true;
        for (Outline.Part part : outline.parts()) {
            double here = slips + variety.slips().own() * random.nextGaussian();
            double paceHere = pace + variety.pace().own() * random.nextGaussian();
            clock = outline.grade().time().isPresent() ? clock : 0;
            double limit =
                    outline.grade()
                            .time()
                            .or(() -> part.section().time())
                            .map(time -> (double) time.toSeconds())
                            .orElse(Double.POSITIVE_INFINITY);
            int points = 0;
            for (Task task : part.tasks()) {
                clock +=
                        task.seconds()
                                * Math.exp(paceHere + variety.problem() * random.nextGaussian());
                boolean right = random.nextDouble() < Math.exp(-task.slips() * Math.exp(here));
                points += right && clock <= limit ? part.section().points() : 0;
            }
            whole += points;
            each &= points >= 70;
        }
        return outline.grade().pass() instanceof Pass.Whole(int least) ? whole >= least : each;
    }

    @Test
    void withNothingKnownAsManyPassAsOfPupilsDrawn() {
        Outline each = Papers.twoSections();
        Outline whole =
                Papers.outline(new Pass.Whole(140), 0, each.parts().toArray(Outline.Part[]::new));
        Outline oneClock =
                Papers.outline(new Pass.Whole(140), 700, each.parts().toArray(Outline.Part[]::new));
        Outline eachByOneClock =
                Papers.outline(
                        new Pass.PointsInEach(70), 700, each.parts().toArray(Outline.Part[]::new));
        Standing standing = Standing.of(NOTHING, Variety.USUAL);

        for (Outline outline : List.of(each, whole, oneClock, eachByOneClock)) {
            assertThat(Forecast.PLAIN.chance(standing, outline))
                    .isCloseTo(passed(outline, 150_000), within(0.015));
        }
    }

    /// The same posterior on a fine grid, without the shared and the own part being told apart.
    @Test
    void oneSectionAgreesWithPlainIntegration() {
        Outline outline =
                Papers.outline(
                        new Pass.PointsInEach(70),
                        0,
                        Papers.part("columns", Papers.COLUMNS, 10, 10, 0.3, 30, 0));
        Variety.Trait trait = Variety.USUAL.slips();
        for (int right : new int[] {0, 8, 15, 19, 20}) {
            List<Worked> answers = Papers.answers(Papers.COLUMNS, 20, right, 0.2, 0);
            double spread = Math.hypot(trait.shared(), trait.own());
            double sum = 0;
            double all = 0;
            for (double x = -5; x <= 5; x += 0.01) {
                double slips = 0.2 * Math.exp(x);
                double likely =
                        Math.exp(
                                -x * x / (2 * spread * spread)
                                        - right * slips
                                        + (20 - right) * Math.log(-Math.expm1(-slips)));
                for (double d = -1.4; d <= 1.4; d += 0.07) {
                    double weight = likely * Math.exp(-d * d / (2 * trait.day() * trait.day()));
                    double one = Math.exp(-0.3 * Math.exp(x + d));
                    sum += weight * sevenOfTen(one);
                    all += weight;
                }
            }
            Standing standing = Standing.of(answers, Variety.USUAL);
            assertThat(Forecast.PLAIN.chance(standing, outline))
                    .as("%d right", right)
                    .isCloseTo(sum / all, within(0.006));
        }
    }

    private static double sevenOfTen(double one) {
        double sum = 0;
        double ways = 1;
        for (int wrong = 0; wrong <= 3; wrong++) {
            sum += ways * Math.pow(one, 10 - wrong) * Math.pow(1 - one, wrong);
            ways = ways * (10 - wrong) / (wrong + 1);
        }
        return sum;
    }

    @Test
    void whoWorksBetterIsReadier() {
        double before = 0;
        for (int right = 10; right <= 40; right += 10) {
            Standing standing =
                    Papers.standing(
                            Papers.answers(Papers.COLUMNS, 40, right, 0.25, 0),
                            Papers.answers(Papers.PRODUCTS, 40, 34, 0.15, 0));
            double here = Forecast.PLAIN.chance(standing, Papers.twoSections());
            assertThat(here).isGreaterThan(before);
            before = here;
        }
    }

    @Test
    void whatIsKnownOfOneFieldSaysSomethingOfTheOther() {
        Outline products =
                Papers.outline(new Pass.PointsInEach(70), 0, Papers.twoSections().parts().get(1));
        Standing good = Papers.standing(Papers.answers(Papers.COLUMNS, 60, 58, 0.25, 0), NOTHING);
        Standing bad = Papers.standing(Papers.answers(Papers.COLUMNS, 60, 20, 0.25, 0), NOTHING);

        assertThat(Forecast.PLAIN.chance(good, products))
                .isGreaterThan(Forecast.PLAIN.chance(bad, products) + 0.2);
    }

    @Test
    void nothingIsToldBelowTheEvidenceItNeeds() {
        Standing standing =
                Papers.standing(
                        Papers.answers(Papers.COLUMNS, 40, 36, 0.25, 0),
                        Papers.answers(Papers.PRODUCTS, 4, 4, 0.15, 0));
        Readiness readiness = told(standing, Papers.twoSections());

        assertThat(readiness.isTold()).isFalse();
        assertThat(readiness.limiting()).isEmpty();
        assertThat(readiness.helps()).isEmpty();
        assertThat(readiness.more()).isEqualTo(6);
        assertThat(readiness.sections().getFirst().told()).isPresent();
        assertThat(readiness.sections().getLast().told()).isEmpty();
    }

    @Test
    void easierProblemsSayLess() {
        Standing easy = Papers.standing(Papers.answers(Papers.COLUMNS, 20, 20, 0.05, 0), NOTHING);
        Readiness readiness = told(easy, Papers.twoSections());

        assertThat(readiness.sections().getFirst().proof().more()).isEqualTo(6);
    }

    @Test
    void withoutTimesNothingIsToldWhereThereIsAClock() {
        List<Worked> untimed =
                IntStream.range(0, 30)
                        .mapToObj(_ ->
                                new Worked(
                                        Papers.COLUMNS,
                                        0.25,
                                        true,
                                        OptionalDouble.empty(),
                                        OptionalLong.empty()))
                        .toList();
        Readiness readiness = told(Papers.standing(untimed, NOTHING), Papers.twoSections());

        assertThat(readiness.sections().getFirst().proof().more()).isEqualTo(5);
    }

    @Test
    void theWeakSectionLimitsAndHelpsMost() {
        Standing standing =
                Papers.standing(
                        Papers.answers(Papers.COLUMNS, 40, 26, 0.25, 0),
                        Papers.answers(Papers.PRODUCTS, 40, 39, 0.15, 0));
        Readiness readiness = told(standing, Papers.twoSections());

        assertThat(readiness.limiting().orElseThrow().field()).isEqualTo(Papers.COLUMNS);
        assertThat(readiness.helps().getFirst().field()).isEqualTo(Papers.COLUMNS);
        Chance chance = readiness.pass().orElseThrow();
        assertThat(chance.likely()).isBetween(chance.low(), chance.high());
    }

    @Test
    void whoIsSlowIsHelpedBySpeedAndRunsOutOfTime() {
        Standing standing =
                Papers.standing(
                        Papers.answers(Papers.COLUMNS, 40, 40, 0.25, 0.5),
                        Papers.answers(Papers.PRODUCTS, 40, 40, 0.15, 0));
        Readiness readiness = told(standing, Papers.twoSections());

        assertThat(readiness.sections().getFirst().told().orElseThrow().timeRunsOut())
                .isGreaterThan(0.7);
        assertThat(readiness.helps().getFirst().way()).isEqualTo(Help.Way.FASTER);
    }

    @Test
    void ofRanksEachHigherOneIsLessLikely() {
        List<Pass.Rank> ranks =
                List.of(
                        new Pass.Rank("1", Label.of("Dan 1", "初段"), 60),
                        new Pass.Rank("2", Label.of("Dan 2", "弐段"), 80),
                        new Pass.Rank("3", Label.of("Dan 3", "参段"), 100));
        Outline.Part[] parts = Papers.twoSections().parts().toArray(Outline.Part[]::new);
        Standing standing =
                Papers.standing(
                        Papers.answers(Papers.COLUMNS, 40, 34, 0.25, 0),
                        Papers.answers(Papers.PRODUCTS, 40, 36, 0.15, 0));
        for (Pass.Scored scored : Pass.Scored.values()) {
            Readiness readiness =
                    told(standing, Papers.outline(new Pass.ByScore(ranks, scored), 0, parts));
            List<Double> chances =
                    readiness.ranks().stream().map(rank -> rank.chance().likely()).toList();
            assertThat(chances).hasSize(3);
            assertThat(chances.get(0)).isGreaterThanOrEqualTo(chances.get(1));
            assertThat(chances.get(1)).isGreaterThanOrEqualTo(chances.get(2));
            assertThat(readiness.next()).isPresent();
        }
    }

    @Test
    void oldAnswersCountLess() {
        List<Worked> old = new ArrayList<>();
        for (Worked one : Papers.answers(Papers.COLUMNS, 20, 5, 0.25, 0)) {
            old.add(new Worked(one.field(), one.slips(), one.right(), one.pace(), day(0)));
        }
        List<Worked> fresh = new ArrayList<>(old);
        for (Worked one : Papers.answers(Papers.COLUMNS, 20, 20, 0.25, 0)) {
            fresh.add(new Worked(one.field(), one.slips(), one.right(), one.pace(), day(120)));
        }
        Outline columns =
                Papers.outline(new Pass.PointsInEach(70), 0, Papers.twoSections().parts().get(0));
        double now = Forecast.PLAIN.chance(Standing.of(fresh, Variety.USUAL), columns);
        List<Worked> sameDay =
                fresh.stream()
                        .map(one ->
                                new Worked(
                                        one.field(),
                                        one.slips(),
                                        one.right(),
                                        one.pace(),
                                        day(120)))
                        .toList();

        assertThat(now)
                .isGreaterThan(
                        Forecast.PLAIN.chance(Standing.of(sameDay, Variety.USUAL), columns) + 0.1);
    }

    private static OptionalLong day(long day) {
        return OptionalLong.of(day);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "ja"})
    void itIsSaidInSentences(String language) {
        ReadinessWords words = ReadinessWords.of(Locale.of(language));
        Standing good =
                Papers.standing(
                        Papers.answers(Papers.COLUMNS, 40, 31, 0.25, 0.2),
                        Papers.answers(Papers.PRODUCTS, 40, 37, 0.15, 0.1));
        Standing new9 =
                Papers.standing(
                        Papers.answers(Papers.COLUMNS, 9, 9, 0.25, 0),
                        Papers.answers(Papers.PRODUCTS, 2, 2, 0.15, 0));
        StringBuilder said = new StringBuilder();
        for (Standing standing : List.of(good, new9)) {
            words.say(told(standing, Papers.twoSections()))
                    .forEach(sentence -> said.append(sentence).append('\n'));
            said.append('\n');
        }

        assertThat(said.toString()).doesNotContain("{", "}");
        Golden.assertGolden("readiness." + language + ".txt", said.toString());
    }
}
