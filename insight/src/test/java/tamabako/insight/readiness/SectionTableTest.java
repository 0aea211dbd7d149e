package tamabako.insight.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tamabako.testkit.Property.forSeeds;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tamabako.problems.grade.Pass;

/// The table of a section, which mixes the scores of the first so many problems, against the scores
/// worked from the last problem to the first.
class SectionTableTest {

    private static final int PACES = Draws.TOGETHER.length * Draws.ALONE.length;
    private static final SlipBelief GRID = Standing.of(List.of(), Variety.USUAL).slips();

    private static double[] right(double[] slips, int place) {
        return Arrays.stream(slips).map(one -> Math.exp(-one * GRID.times(place))).toArray();
    }

    private static ScoreSums sums(double[] right, double[] going) {
        int[] ones = new int[right.length];
        Arrays.fill(ones, 1);
        ScoreSums sums = new ScoreSums(right.length);
        sums.work(right, ones, going, right.length);
        return sums;
    }

    @Test
    void everyScoreAgreesWithThoseWorkedFromTheLastProblemOn() {
        forSeeds(
                20,
                draw -> {
                    int count = draw.between(1, 60);
                    Outline.Part part =
                            Papers.part("columns", Papers.COLUMNS, count, 5, 0.2, 30, 0);
                    Goals goals =
                            new WholePaper(List.of(part), new int[] {count}, Optional.empty());
                    double[] slips =
                            IntStream.range(0, count)
                                    .mapToDouble(_ -> draw.between(1, 500) / 1000.0)
                                    .toArray();
                    double[][] going = new double[PACES][count];
                    for (double[] pace : going) {
                        double least = draw.between(0, 10) / 10.0;
                        Arrays.setAll(
                                pace, _ -> least + (1 - least) * draw.between(0, 1000) / 1000.0);
                    }
                    int lowest = draw.between(-20, 0);
                    int highest = lowest + draw.between(1, 20);
                    FirstProblems first =
                            new FirstProblems(slips, GRID, lowest, highest, goals.reading(0));
                    SectionTable table = SectionTable.of(first, going, goals.putting(0));
                    for (int place : first.worked()) {
                        for (int pace = 0; pace < PACES; pace++) {
                            ScoreSums sums = sums(right(slips, lowest + place), going[pace]);
                            int at =
                                    table.at(
                                            pace / Draws.ALONE.length,
                                            pace % Draws.ALONE.length,
                                            lowest + place);
                            for (int score = 0; score <= count; score++) {
                                double exact = sums.chance(score);
                                assertThat(table.numbers()[at + score])
                                        .isCloseTo(exact, within(1e-15 + 1e-12 * exact));
                            }
                        }
                    }
                });
    }

    @Test
    void everyPlaceHasItsNumbersThoseBetweenToo() {
        for (int highest = 1; highest <= 12; highest++) {
            Outline.Part part = Papers.part("columns", Papers.COLUMNS, 10, 10, 0.2, 30, 0);
            Goals goals =
                    Goals.of(
                            Papers.outline(new Pass.PointsInEach(70), 0, part).grade(),
                            List.of(part));
            double[] slips = part.tasks().stream().mapToDouble(Task::slips).toArray();
            double[][] going = new double[PACES][10];
            for (double[] pace : going) {
                Arrays.fill(pace, 1);
            }
            SectionTable table =
                    SectionTable.of(
                            new FirstProblems(slips, GRID, 0, highest, goals.reading(0)),
                            going,
                            goals.putting(0));
            for (int place = 0; place <= highest; place++) {
                double exact = sums(right(slips, place), going[0]).atLeast(7);
                assertThat(table.numbers()[table.at(0, 0, place)])
                        .as("place %d of %d", place, highest)
                        .isCloseTo(exact, within(0.01));
            }
        }
    }
}
