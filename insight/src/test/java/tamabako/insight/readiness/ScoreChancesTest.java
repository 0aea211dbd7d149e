package tamabako.insight.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tamabako.testkit.Property.forSeeds;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/// The chances of scores against exact fractions, against R, and against the clock.
class ScoreChancesTest {

    /// The reference values of a section against the clock are those of a simulation with 4,000,000
    /// draws and of a grid of 0.05 s; difficulties run evenly from -0.8 to 0.8, and the logarithm
    /// of a time rises by 0.09 of the difficulty.
    private record Clocked(
            String name, int count, double odds, double mean, double spread, int pass) {

        List<ScoreChances.Item> items(int points) {
            return IntStream.range(0, count)
                    .mapToObj(i -> {
                        double difficulty = -0.8 + 1.6 * i / (count - 1);
                        double oddsHere = odds * Math.exp(-difficulty);
                        double log = Math.log(mean) - spread * spread / 2 + 0.09 * difficulty;
                        return new ScoreChances.Item(
                                oddsHere / (1 + oddsHere), points, Math.exp(log));
                    })
                    .toList();
        }

        ScoreChances chances(double limit) {
            return ScoreChances.of(items(100 / count), spread, limit);
        }
    }

    private static final List<Clocked> CASES =
            List.of(
                    new Clocked("column 10x10pt, mean 40 s", 10, 3, 40, 0.25, 70),
                    new Clocked("mult 20x5pt, mean 21 s", 20, 17 / 3.0, 21, 0.3, 70),
                    new Clocked("tight: 20x5pt mean 24 s", 20, 9, 24, 0.3, 70),
                    new Clocked("loose: 20x5pt mean 15 s", 20, 4, 15, 0.3, 70),
                    new Clocked("slow starter 10x10pt, 55 s sd .5", 10, 9, 55, 0.5, 70));

    private static List<String[]> vectors(String name) throws IOException {
        return Files.readAllLines(Path.of("src", "test", "vectors", name)).stream()
                .filter(line -> !line.startsWith("#"))
                .skip(1)
                .map(line -> line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1))
                .toList();
    }

    private static ScoreSums sums(double[] right, int[] points) {
        ScoreSums sums = new ScoreSums(1);
        sums.work(right, points, right.length);
        return sums;
    }

    @Test
    void everyCellAgreesWithExactFractionsToTwelveFigures() {
        forSeeds(
                30,
                draw -> {
                    int count = 50;
                    double[] right = new double[count];
                    double[] going = new double[count];
                    int[] points = new int[count];
                    for (int i = 0; i < count; i++) {
                        right[i] = draw.between(1, 999) / 1000.0;
                        going[i] = draw.between(500, 1000) / 1000.0;
                        points[i] = new int[] {2, 5, 10}[draw.between(0, 2)];
                    }
                    double[] all = new double[count];
                    Arrays.fill(all, 1);
                    assertExact(right, points, all);
                    assertExact(right, points, going);
                });
    }

    /// Adds up, for every m, the chance that just m problems are done times their exact scores.
    private static void assertExact(double[] right, int[] points, double[] going) {
        int most = Arrays.stream(points).sum();
        BigDecimal[] mixed = new BigDecimal[most + 1];
        BigDecimal[] first = new BigDecimal[most + 1];
        Arrays.fill(mixed, BigDecimal.ZERO);
        Arrays.fill(first, BigDecimal.ZERO);
        first[0] = BigDecimal.ONE;
        BigDecimal reached = BigDecimal.ONE;
        for (int m = 0; m <= right.length; m++) {
            BigDecimal goes = m < right.length ? new BigDecimal(going[m]) : BigDecimal.ZERO;
            BigDecimal stops = reached.multiply(BigDecimal.ONE.subtract(goes));
            for (int score = 0; score <= most; score++) {
                mixed[score] =
                        mixed[score].add(stops.multiply(first[score], MathContext.DECIMAL128));
            }
            reached = reached.multiply(goes, MathContext.DECIMAL128);
            if (m < right.length) {
                BigDecimal p = new BigDecimal(right[m]);
                BigDecimal q = BigDecimal.ONE.subtract(p);
                for (int score = most; score >= 0; score--) {
                    BigDecimal better =
                            score < points[m]
                                    ? BigDecimal.ZERO
                                    : first[score - points[m]].multiply(p);
                    first[score] =
                            first[score].multiply(q).add(better).round(MathContext.DECIMAL128);
                }
            }
        }
        ScoreSums sums = new ScoreSums(1);
        sums.work(right, points, going, right.length);
        for (int score = 0; score <= most; score++) {
            double exact = mixed[score].doubleValue();
            assertThat(sums.chance(score))
                    .as("score %d", score)
                    .isCloseTo(exact, within(1e-12 * exact));
        }
    }

    /// Source: R package PoissonBinomial 1.2.5, `dpbinom(method = "Convolve")`.
    @Test
    void numbersOfRightAnswersAgreeWithR() throws IOException {
        double[] some = {.95, .9, .9, .85, .8, .8, .75, .7, .6, .5};
        double[] rising = IntStream.range(0, 50).mapToDouble(i -> 0.01 + 0.02 * i).toArray();
        double[] same = new double[20];
        Arrays.fill(same, 0.3);
        List<String[]> lines =
                Files.readAllLines(Path.of("src/test/vectors/poisson-binomial.csv")).stream()
                        .filter(line -> line.matches("[ABC]:.*"))
                        .map(line -> line.split(",", -1))
                        .toList();
        assertThat(lines).hasSize(11 + 51 + 21);
        for (String[] line : lines) {
            double[] right =
                    switch (line[0].charAt(0)) {
                        case 'A' -> some;
                        case 'B' -> rising;
                        default -> same;
                    };
            int[] points = new int[right.length];
            Arrays.fill(points, 1);
            int k = Integer.parseInt(line[line.length - 3]);
            double expected = Double.parseDouble(line[line.length - 2]);
            assertThat(sums(right, points).chance(k)).isCloseTo(expected, within(1e-13));
            double below = Double.parseDouble(line[line.length - 1]);
            assertThat(1 - sums(right, points).atLeast(k + 1)).isCloseTo(below, within(1e-13));
        }
    }

    /// Source: R package PoissonBinomial 1.2.5, `dgpbinom`, five problems of 5 and five of 10
    /// points.
    @Test
    void pointsAgreeWithR() throws IOException {
        double[] right = {.95, .9, .9, .85, .8, .8, .75, .7, .6, .5};
        int[] points = {5, 5, 5, 5, 5, 10, 10, 10, 10, 10};
        ScoreSums sums = sums(right, points);
        List<String[]> lines = vectors("poisson-binomial-points.csv");
        assertThat(lines).hasSize(76);
        for (String[] line : lines) {
            int score = Integer.parseInt(line[0]);
            assertThat(sums.chance(score)).isCloseTo(Double.parseDouble(line[1]), within(1e-13));
            assertThat(sums.atLeast(score)).isCloseTo(Double.parseDouble(line[2]), within(1e-13));
        }
    }

    @Test
    void scoresAgainstTheClockAgreeWithAFineGrid() throws IOException {
        ScoreChances chances = CASES.getFirst().chances(420);
        List<String[]> lines = vectors("score-pmf.csv");
        for (String[] line : lines) {
            assertThat(chances.chance(Integer.parseInt(line[6])))
                    .isCloseTo(Double.parseDouble(line[7]), within(1e-4));
        }
        double lastReached = Double.parseDouble(lines.getLast()[5]);
        assertThat(1 - chances.timeRunsOut()).isCloseTo(lastReached, within(1e-3));
    }

    @Test
    void theChanceToPassAgreesWithFourMillionDraws() throws IOException {
        List<String[]> lines = vectors("score-time-limit.csv");
        assertThat(lines).hasSize(CASES.size());
        for (int i = 0; i < CASES.size(); i++) {
            Clocked one = CASES.get(i);
            String[] line = lines.get(i);
            assertThat(line[0].replace("\"", "")).isEqualTo(one.name());
            double drawn = Double.parseDouble(line[1]);
            assertThat(one.chances(420).atLeast(one.pass()))
                    .as(one.name())
                    .isCloseTo(drawn, within(5e-4));
            double onGrid = Double.parseDouble(line[3]);
            assertThat(one.chances(420).atLeast(one.pass()))
                    .as(one.name())
                    .isCloseTo(onGrid, within(1e-4));
            double noClock = Double.parseDouble(line[7]);
            assertThat(one.chances(Double.POSITIVE_INFINITY).atLeast(one.pass()))
                    .as(one.name())
                    .isCloseTo(noClock, within(1e-6));
        }
    }

    @Test
    void theChancesOfAllScoresAddUpToOne() {
        ScoreChances chances = CASES.get(2).chances(420);
        assertThat(chances.most()).isEqualTo(100);
        assertThat(chances.atLeast(0)).isCloseTo(1, within(1e-12));
        assertThat(chances.mean()).isBetween(70.0, 89.0);
    }

    @Test
    void withoutTimeNothingIsScored() {
        ScoreChances chances = CASES.getFirst().chances(1);
        assertThat(chances.chance(0)).isCloseTo(1, within(1e-9));
        assertThat(chances.timeRunsOut()).isCloseTo(1, within(1e-9));
    }
}
