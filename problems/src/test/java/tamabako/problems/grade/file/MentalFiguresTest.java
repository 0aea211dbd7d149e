package tamabako.problems.grade.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tamabako.problems.Mode;
import tamabako.problems.grade.Batch;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.Section;

/// The mental papers against the published tables. Sources: Nisshuren, www.shuzan.jp/kentei/anzan;
/// cocoiro.me/article/39616/2; ranks of the dan of sections, Japanese Wikipedia (全国珠算教育連盟主催暗算検定).
class MentalFiguresTest {

    private static final String LADDER = "mental-one-sheet";

    /// grade; columns; digits in all of multiplication; of division.
    private static final String TABLE =
            """
            1      20*3x10           30*5        30*5
            jun-1  10*3x7+10*3x10    15*4+15*5   15*4+15*5
            2      20*3x7            30*4        30*4
            jun-2  10*3x5+10*3x7     30*4        30*4
            3      20*3x5            30*4        30*4
            jun-3  10*2x5+10*3x5     15*3+15*4   15*3+15*4
            4      20*2x5            30*3        30*3
            5      20*1-2x5=8        30*3        30*3
            6      20*1-2x5=6        30*3        30*3
            """;

    @Test
    void grades6To1AreAsPublished() {
        for (String line : TABLE.lines().toList()) {
            String[] figures = line.strip().split("\\s+", -1);
            Grade grade = Shipped.grade(LADDER, figures[0]);

            assertThat(batches(grade, "mental-columns")).isEqualTo(figures[1]);
            assertThat(batches(grade, "mental-products")).isEqualTo(figures[2]);
            assertThat(batches(grade, "mental-quotients")).isEqualTo(figures[3]);
            assertThat(Shipped.counts(grade))
                    .containsExactly(
                            "mental-columns 20x10",
                            "mental-products 30x5",
                            "mental-quotients 30x5");
            assertThat(grade.fullMarks()).isEqualTo(500);
            assertThat(grade.pass()).isEqualTo(new Pass.Whole(400));
            assertThat(grade.time()).contains(Duration.ofMinutes(12));
            assertThat(grade.sections()).allMatch(section -> section.mode() == Mode.MENTAL);
        }
    }

    @Test
    void grades7To10ShareAPaperOf50ShortColumns() {
        Grade grade = Shipped.grade(LADDER, "7-10");

        assertThat(batches(grade, "mental-columns")).isEqualTo("15*1x3+15*1x4+20*1x5");
        assertThat(grade.fullMarks()).isEqualTo(500);
        assertThat(Shipped.ranks(grade)).isEqualTo("10 250, 9 300, 8 350, 7 400");
        assertThat(grade.time()).contains(Duration.ofMinutes(12));
    }

    @Test
    void theMentalDanOfSectionsIsAsPublished() {
        Grade grade = Shipped.grade("mental-dan-by-sections", "dan");

        assertThat(Shipped.ranks(grade))
                .isEqualTo(
                        "jun-1 70, 1 80, jun-2 85, 2 90, jun-3 95, 3 100, jun-4 105, 4 110, "
                                + "jun-5 115, 5 120, jun-6 125, 6 130, 7 140, 8 150, 9 170, 10 190");
        assertThat(Shipped.counts(grade))
                .containsExactly(
                        "mental-products 40x5", "mental-quotients 40x5", "mental-columns 40x5");
        assertThat(grade.sections()).extracting(Section::fullMarks).containsOnly(200);
        assertThat(Shipped.minutes(grade))
                .containsExactly("mental-products 3", "mental-quotients 3", "mental-columns 3");
    }

    private static String batches(Grade grade, String section) {
        List<Batch> batches = grade.section(section).orElseThrow().batches();
        return batches.stream()
                .map(batch -> batch.count() + "*" + told(section, batch))
                .collect(Collectors.joining("+"));
    }

    private static String told(String section, Batch batch) {
        return section.equals("mental-columns")
                ? Shipped.rows(batch.format())
                : Integer.toString(Shipped.inAll(batch.format()));
    }
}
