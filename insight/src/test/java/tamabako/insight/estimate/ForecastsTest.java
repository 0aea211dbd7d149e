package tamabako.insight.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/// Who passes an examination, forecast from earlier tests, against R's glm and pROC.
class ForecastsTest {

    private record Student(double tests, double attempt, double study571, boolean passed) {

        double[] features() {
            return new double[] {1, tests, attempt, study571};
        }

        double came() {
            return passed ? 1 : 0;
        }
    }

    private static List<Student> students() {
        Table table = Table.read("mathexam-pass");
        List<Double> tests = table.numbers("tests");
        List<Double> attempts = table.numbers("attempt");
        List<Double> studies = table.numbers("study571");
        List<Integer> passed = table.wholes("passed");
        List<Student> students = new ArrayList<>();
        for (int i = 0; i < passed.size(); i++) {
            students.add(
                    new Student(tests.get(i), attempts.get(i), studies.get(i), passed.get(i) == 1));
        }
        return students;
    }

    private static LogisticFit fit(List<Student> students) {
        return LogisticRegression.fit(
                        Trials.of(
                                students.stream().map(Student::features).toArray(double[][]::new),
                                students.stream().mapToDouble(Student::came).toArray()))
                .orElseThrow();
    }

    private static Forecast forecast(LogisticFit fit, Student student) {
        return new Forecast(fit.chance(student.features()), student.passed());
    }

    /// Each forecast from the nine tenths that the student is not in; tenths by the last digit of
    /// the place in the list.
    private static List<Forecast> crossed(List<Student> students) {
        List<LogisticFit> fits = new ArrayList<>();
        for (int tenth = 0; tenth < 10; tenth++) {
            List<Student> others = new ArrayList<>();
            for (int i = 0; i < students.size(); i++) {
                if (i % 10 != tenth) {
                    others.add(students.get(i));
                }
            }
            fits.add(fit(others));
        }
        List<Forecast> forecasts = new ArrayList<>();
        for (int i = 0; i < students.size(); i++) {
            forecasts.add(forecast(fits.get(i % 10), students.get(i)));
        }
        return forecasts;
    }

    @Test
    void whatPassingFollowsFromIsAsGlmSays() {
        Table expected = Table.read("mathexam-pass-logit");

        LogisticFit found = fit(students());

        Largest.between(RaschTest.values(found.coefficients()), expected.numbers("est"))
                .isAtMost(1e-5);
        Largest.between(RaschTest.errors(found.coefficients()), expected.numbers("se"))
                .isAtMost(1e-5);
    }

    @Test
    void theForecastsAsFittedAreAsGoodAsInR() {
        List<Student> students = students();
        LogisticFit fit = fit(students);

        areAsGoodAs(students.stream().map(s -> forecast(fit, s)).toList(), "in_sample");
    }

    @Test
    void theForecastsOfWhoWasLeftOutAreAsGoodAsInR() {
        areAsGoodAs(crossed(students()), "cv10");
    }

    private static void areAsGoodAs(List<Forecast> forecasts, String column) {
        Table expected = Table.read("mathexam-pass-quality");
        Forecasts.Bend bend = Forecasts.bend(forecasts).orElseThrow();
        Forecasts.Fit fit = Forecasts.fit(forecasts, 10);
        List<Double> found =
                List.of(
                        (double) forecasts.size(),
                        forecasts.stream().mapToDouble(Forecast::came).average().orElseThrow(),
                        Forecasts.rankedRight(forecasts),
                        Forecasts.brier(forecasts),
                        Forecasts.logLoss(forecasts),
                        Forecasts.errorByWidth(forecasts, 10),
                        Forecasts.errorByNumber(forecasts, 10),
                        fit.chiSquare(),
                        fit.chance(),
                        bend.slope().value(),
                        bend.shift().value());

        Largest.between(found, expected.numbers(column)).isAtMost(1e-5);
    }

    @Test
    void equalChancesAreRankedRightEverySecondTime() {
        List<Forecast> forecasts =
                List.of(new Forecast(.5, true), new Forecast(.5, false), new Forecast(.4, false));

        assertThat(Forecasts.rankedRight(forecasts)).isCloseTo(.75, within(1e-15));
    }
}
