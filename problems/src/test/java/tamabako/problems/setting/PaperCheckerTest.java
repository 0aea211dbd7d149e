package tamabako.problems.setting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.file.Ladders;

class PaperCheckerTest {

    private static final int PAPERS = 30;

    @TestFactory
    Stream<DynamicTest> papersOfEveryExamAreInOrder() {
        return Ladders.shipped().stream()
                .filter(ladder -> !ladder.id().equals("first-steps"))
                .flatMap(ladder -> ladder.grades().stream().map(grade -> inOrder(ladder, grade)));
    }

    private static DynamicTest inOrder(Ladder ladder, Grade grade) {
        return DynamicTest.dynamicTest(
                ladder.id() + " " + grade.id(),
                () -> {
                    PaperMaker maker = PaperMaker.of(ladder.id(), grade);
                    for (int seed = 0; seed < PAPERS; seed++) {
                        Paper paper = SamplePapers.paper(maker, seed);
                        assertThat(PaperChecker.complaints(paper)).as("seed " + seed).isEmpty();
                    }
                });
    }
}
