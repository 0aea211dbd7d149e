package tamabako.insight.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import tamabako.insight.pace.Part;
import tamabako.insight.pace.WorkParts;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Terms;
import tamabako.problems.grade.Pass;

/// The pupil's own seconds for each move in the clock's forecast.
class PaceShapeTest {

    /// All direct.
    private static final Problem DIRECT = column(11, 11, 11, 11, 55);

    /// Many complements of ten and five.
    private static final Problem COMPLEMENTS = column(86, 77, 68, 77, 86);

    private static Problem column(long... rows) {
        List<BigDecimal> numbers = LongStream.of(rows).mapToObj(BigDecimal::valueOf).toList();
        return new Column("1", numbers, Terms.PLAIN);
    }

    /// The time of a pupil who takes half as long again for carrying.
    private static double seconds(WorkParts parts, double slow) {
        double all = 0;
        for (Part part : Part.values()) {
            boolean isSlow =
                    part == Part.ADD_TEN_COMPLEMENT
                            || part == Part.ADD_TEN_WITH_FIVE
                            || part == Part.CARRY_RUNS_ON;
            all += parts.seconds(part) * (isSlow ? slow : 1);
        }
        return all;
    }

    private static List<Worked> practice(int count, double slow, boolean parts) {
        SplittableRandom random = new SplittableRandom(3);
        List<Worked> worked = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            WorkParts all = WorkParts.of(i % 4 == 0 ? COMPLEMENTS : DIRECT);
            double took = seconds(all, slow) * Math.exp(0.05 * random.nextGaussian());
            worked.add(
                    new Worked(
                            Papers.COLUMNS,
                            0.01,
                            true,
                            OptionalDouble.of(Math.log(took / all.total())),
                            OptionalLong.empty(),
                            parts ? Optional.of(all) : Optional.empty()));
        }
        return worked;
    }

    private static Task task(Problem problem) {
        WorkParts parts = WorkParts.of(problem);
        return new Task(0.01, parts.total(), Optional.of(parts));
    }

    /// Ten of these with so many times the time that this pupil needs.
    private static Outline outline(Problem problem, double slow, double times) {
        int limit = (int) Math.round(10 * times * seconds(WorkParts.of(problem), slow));
        Outline.Part part = Papers.part("columns", Papers.COLUMNS, 10, 10, 0.01, 30, limit);
        List<Task> tasks = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            tasks.add(task(problem));
        }
        return Papers.outline(
                new Pass.PointsInEach(90),
                0,
                new Outline.Part(part.section(), part.field(), tasks));
    }

    private static double runsOut(List<Worked> practice, Outline outline) {
        Standing standing = Standing.of(practice, Variety.USUAL);
        return Forecast.PLAIN
                .of(standing, outline)
                .sections()
                .getFirst()
                .told()
                .orElseThrow()
                .timeRunsOut();
    }

    @Test
    void whoIsSlowAtCarryingRunsOutOfTimeWhereThereIsMuchToCarry() {
        List<Worked> own = practice(400, 1.8, true);
        List<Worked> plain = practice(400, 1.8, false);
        Outline carrying = outline(COMPLEMENTS, 1.8, 1.0);
        Outline direct = outline(DIRECT, 1.8, 1.0);

        assertThat(runsOut(own, carrying)).isGreaterThan(runsOut(plain, carrying) + 0.2);
        assertThat(runsOut(own, carrying)).isBetween(0.3, 0.75);
        assertThat(runsOut(own, direct)).isBetween(0.3, 0.75);
    }

    @Test
    void withoutTimesEnoughItIsTheShapeOfPupilsInGeneral() {
        List<Worked> few = practice(4, 1.8, true);
        PaceShape shape = shape(few);

        assertThat(shape.logs(outline(COMPLEMENTS, 1, 1).parts().getFirst())[0])
                .isCloseTo(Math.log(task(COMPLEMENTS).seconds()), within(1e-9));
        assertThat(shape.of(few.getFirst()).pace()).isEqualTo(few.getFirst().pace());
        assertThat(shape.doubt(outline(COMPLEMENTS, 1, 1).parts().getFirst())).isZero();
    }

    @Test
    void aPupilWithAllMovesAlikeKeepsTheShape() {
        PaceShape shape = shape(practice(100, 1, true));
        double carrying =
                shape.logs(outline(COMPLEMENTS, 1, 1).parts().getFirst())[0]
                        - Math.log(task(COMPLEMENTS).seconds());
        double direct =
                shape.logs(outline(DIRECT, 1, 1).parts().getFirst())[0]
                        - Math.log(task(DIRECT).seconds());

        assertThat(carrying - direct).isCloseTo(0, within(0.04));
    }

    @Test
    void otherWorkThanWasPractisedIsMoreDoubtful() {
        List<Worked> direct =
                practice(200, 1.8, true).stream()
                        .filter(answer ->
                                answer.parts().orElseThrow().steps(Part.ADD_TEN_COMPLEMENT) == 0)
                        .toList();
        PaceShape shape = shape(direct);

        assertThat(shape.doubt(outline(DIRECT, 1, 1).parts().getFirst()))
                .isCloseTo(0, within(1e-6));
        assertThat(shape.doubt(outline(COMPLEMENTS, 1, 1).parts().getFirst())).isGreaterThan(0.05);
    }

    private static PaceShape shape(List<Worked> answers) {
        return Standing.of(answers, Variety.USUAL).shape();
    }
}
