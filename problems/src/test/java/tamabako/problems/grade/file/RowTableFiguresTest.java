package tamabako.problems.grade.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tamabako.problems.grade.Batch;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Lengths;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.Signs;
import tamabako.problems.grade.Span;

/// The mental grades by tables of row lengths against the standard of the world association
/// (世界珠算心算联合会), read in a copy.
class RowTableFiguresTest {

    private static final String LADDER = "mental-row-tables";

    /// grade; rows; ji; rows of 4, 3, 2 and 1 digits; minus rows of a mixed column; columns with
    /// two decimals; digits in all 10 multiplications.
    private static final int[][] TABLE = {
        {1, 10, 30, 3, 4, 3, 0, 3, 5, 48},
        {2, 10, 25, 2, 3, 3, 2, 3, 5, 44},
        {3, 8, 20, 2, 2, 2, 2, 3, 5, 40},
        {4, 8, 18, 1, 2, 3, 2, 3, 5, 36},
        {5, 7, 14, 0, 2, 3, 2, 3, 5, 32},
        {6, 7, 12, 0, 1, 3, 3, 3, 0, 25},
        {7, 6, 10, 0, 1, 2, 3, 2, 0, 0},
        {8, 5, 7, 0, 0, 2, 3, 2, 0, 0},
        {9, 4, 5, 0, 0, 1, 3, 1, 0, 0},
        {10, 3, 3, 0, 0, 0, 3, 1, 0, 0}
    };

    @Test
    void theColumnsAreAsPublished() {
        for (int[] figures : TABLE) {
            List<Batch> batches = grade(figures).section("mental-columns").orElseThrow().batches();
            assertThat(batches.stream().mapToInt(Batch::count).sum()).isEqualTo(10);
            assertThat(batches.stream().mapToInt(RowTableFiguresTest::mixed).sum()).isEqualTo(4);
            int decimals =
                    batches.stream()
                            .filter(batch -> columns(batch).amounts().places() == 2)
                            .mapToInt(Batch::count)
                            .sum();
            assertThat(decimals).isEqualTo(figures[8]);
            for (Batch batch : batches) {
                Lengths.Table table = (Lengths.Table) columns(batch).lengths();
                assertThat(table.rows()).isEqualTo(figures[1]);
                assertThat(table.ji()).isEqualTo(figures[2]);
                for (int digits = 4; digits >= 1; digits--) {
                    assertThat(table.rowsByDigits().getOrDefault(digits, 0))
                            .isEqualTo(figures[7 - digits]);
                }
                assertThat(columns(batch).signs().minusRows()).isEqualTo(Span.of(figures[7]));
                assertThat(columns(batch).signs()).extracting(Signs::mayDip).isEqualTo(false);
            }
        }
    }

    @Test
    void theMultiplicationsAreAsPublished() {
        List<String> mixes =
                List.of(
                        "4*3x2 4*2x3 2*2x2",
                        "2*3x2 2*2x3 4*2x2 1*3x1 1*1x3",
                        "4*2x2 3*3x1 3*1x3",
                        "6*2x2 2*2x1 2*1x2",
                        "2*2x2 4*2x1 4*1x2",
                        "2*2x1 3*1x2 5*1x1");
        for (int i = 0; i < mixes.size(); i++) {
            List<Batch> batches =
                    grade(TABLE[i]).section("mental-products").orElseThrow().batches();
            assertThat(
                            batches.stream()
                                    .map(RowTableFiguresTest::mix)
                                    .collect(Collectors.joining(" ")))
                    .isEqualTo(mixes.get(i));
            int digits =
                    batches.stream().mapToInt(b -> b.count() * Shipped.inAll(b.format())).sum();
            assertThat(digits).isEqualTo(TABLE[i][9]);
        }
        assertThat(IntStream.rangeClosed(7, 10).mapToObj(g -> grade(TABLE[g - 1])))
                .allMatch(grade -> grade.section("mental-products").isEmpty());
    }

    @Test
    void inGrades1To4TwoHaveDecimalsOneRoundedUpAndOneDown() {
        for (int[] figures : TABLE) {
            int decimals = 0;
            int up = 0;
            int down = 0;
            List<Batch> batches =
                    grade(figures)
                            .section("mental-products")
                            .map(s -> s.batches())
                            .orElse(List.of());
            for (Batch batch : batches) {
                Format.Answers answers = Shipped.answers(batch.format());
                decimals += answers.decimals();
                up += answers.rounded().map(Format.Rounded::up).orElse(0);
                down += answers.rounded().map(Format.Rounded::down).orElse(0);
            }
            assertThat(List.of(decimals, up, down))
                    .isEqualTo(figures[0] <= 4 ? List.of(2, 1, 1) : List.of(0, 0, 0));
        }
    }

    @Test
    void eightOfTenRightInEachSectionPass() {
        for (int[] figures : TABLE) {
            assertThat(grade(figures).pass()).isEqualTo(new Pass.RightInEach(8));
        }
    }

    private static Grade grade(int[] figures) {
        return Shipped.grade(LADDER, Integer.toString(figures[0]));
    }

    private static Format.Columns columns(Batch batch) {
        return (Format.Columns) batch.format();
    }

    private static int mixed(Batch batch) {
        return columns(batch).signs().mixed().count();
    }

    private static String mix(Batch batch) {
        Format.Products products = (Format.Products) batch.format();
        return batch.count() + "*" + products.multiplicand() + "x" + products.multiplier();
    }
}
