package tamabako.problems.grade.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tamabako.problems.grade.Cite;
import tamabako.problems.grade.Figure;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Numbering;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.Share;
import tamabako.problems.grade.Signs;
import tamabako.problems.grade.Span;

/// The abacus test on one sheet against the published tables. Sources: JCCI,
/// shuzan.jp/kentei/shuzan and shuzan.jp/kentei/shuzan/kihon.html; digit ranges
/// tokicci.or.jp/kentei/index2.html, ohdacci.com, seo-sem.co.jp; grades 7 to 10
/// kindasyuzan.com/kentei.htm.
class OneSheetFiguresTest {

    private static final String LADDER = "abacus-one-sheet";

    /// grade; columns; multiplication; division; points to pass.
    private static final String TABLE =
            """
            1  10x10  11=5-7+4-6  10=4-6+4-6  240
            2   8x10   9=4-6+3-5   8=3-5+3-5  240
            3   6x10   7=3-5+2-4   6=2-4+2-4  240
            4   5x10   7=3-5+2-4   6=2-4+2-4  210
            5   4x10   6=2-4+2-4   5=2-3+2-3  210
            6   3x10   5=2-3+2-3   4=2+2      210
            """;

    @Test
    void grades6To1AreAsPublished() {
        for (String line : TABLE.lines().toList()) {
            String[] figures = line.strip().split("\\s+", -1);
            Grade grade = Shipped.grade(LADDER, figures[0]);

            assertThat(Shipped.only(grade, "columns", Shipped::rows)).isEqualTo(figures[1]);
            assertThat(Shipped.only(grade, "products", Shipped::pair)).isEqualTo(figures[2]);
            assertThat(Shipped.only(grade, "quotients", Shipped::pair)).isEqualTo(figures[3]);
            assertThat(grade.pass()).isEqualTo(new Pass.Whole(Integer.parseInt(figures[4])));
            assertThat(Shipped.counts(grade))
                    .containsExactly("columns 10x10", "products 20x5", "quotients 20x5");
            assertThat(grade.fullMarks()).isEqualTo(300);
            assertThat(grade.time()).contains(Duration.ofMinutes(30));
            assertThat(grade.numbering()).isEqualTo(Numbering.THROUGH);
        }
    }

    @Test
    void the20MultiplicationsAndDivisionsAre10PlainAnd10InYen() {
        for (String grade : List.of("6", "5", "4", "3", "2", "1")) {
            for (String section : List.of("products", "quotients")) {
                List<Format> batches = Shipped.formats(Shipped.grade(LADDER, grade), section);
                List<Format.Answers> answers = batches.stream().map(Shipped::answers).toList();

                assertThat(answers)
                        .extracting(Format.Answers::unit)
                        .containsExactly(Optional.empty(), Optional.of("JPY"));
                boolean decimals = "123".contains(grade);
                assertThat(answers).allMatch(answer -> answer.decimals() > 0 == decimals);
                assertThat(answers)
                        .extracting(answer -> answer.rounded().map(Format.Rounded::places))
                        .isEqualTo(
                                decimals
                                        ? List.of(Optional.of(3), Optional.of(0))
                                        : List.of(Optional.empty(), Optional.empty()));
            }
        }
    }

    @Test
    void ofTenColumnsFourAreMixedTwoInEachHalf() {
        for (String grade : List.of("9-10", "8", "7", "6", "5", "4", "3", "2", "1")) {
            Signs signs =
                    Shipped.only(
                            Shipped.grade(LADDER, grade),
                            "columns",
                            format -> ((Format.Columns) format).signs());

            assertThat(signs.mixed()).isEqualTo(new Share(4, OptionalInt.of(2)));
            assertThat(signs.negative())
                    .isEqualTo(
                            "12".contains(grade) && grade.length() == 1
                                    ? new Share(1, OptionalInt.of(1))
                                    : Share.NONE);
        }
    }

    @Test
    void grades7To10AreAsPublished() {
        Grade seven = Shipped.grade(LADDER, "7");
        assertThat(Shipped.only(seven, "columns", Shipped::rows)).isEqualTo("2x10");
        assertThat(Shipped.only(seven, "products", Shipped::pair)).isEqualTo("4=2+2");
        assertThat(Shipped.only(seven, "quotients", Shipped::pair)).isEqualTo("4=1+3");
        Grade eight = Shipped.grade(LADDER, "8");
        assertThat(Shipped.only(eight, "columns", Shipped::rows)).isEqualTo("2x8");
        assertThat(Shipped.only(eight, "products", Shipped::pair)).isEqualTo("4=3+1");
        assertThat(Shipped.only(eight, "quotients", Shipped::pair)).isEqualTo("3=1+2");
        Grade low = Shipped.grade(LADDER, "9-10");
        assertThat(Shipped.only(low, "columns", Shipped::rows)).isEqualTo("2x5");
        assertThat(Shipped.only(low, "products", Shipped::pair)).isEqualTo("3=2+1");

        assertThat(Shipped.counts(seven))
                .isEqualTo(Shipped.counts(eight))
                .containsExactly("columns 10x10", "products 10x5", "quotients 10x5");
        assertThat(Shipped.counts(low)).containsExactly("columns 10x10", "products 20x5");
        for (Grade grade : List.of(low, eight, seven)) {
            assertThat(grade.fullMarks()).isEqualTo(200);
            assertThat(grade.time()).contains(Duration.ofMinutes(20));
        }
        assertThat(Shipped.ranks(low)).startsWith("10 60");
    }

    @Test
    void aSemiGradeIsHalfOfEachNeighbourAndUnconfirmed() {
        for (int above = 1; above <= 3; above++) {
            Grade semi = Shipped.grade(LADDER, "jun-" + above);
            Grade lower = Shipped.grade(LADDER, Integer.toString(above + 1));
            Grade upper = Shipped.grade(LADDER, Integer.toString(above));

            for (String section : List.of("products", "quotients")) {
                List<String> digits =
                        Shipped.formats(semi, section).stream().map(Shipped::pair).toList();
                String low = Shipped.only(lower, section, Shipped::pair);
                String high = Shipped.only(upper, section, Shipped::pair);
                assertThat(digits).containsExactly(low, high, low, high);
            }
            List<String> rows = new ArrayList<>();
            Shipped.formats(semi, "columns").forEach(format -> rows.add(Shipped.rows(format)));
            assertThat(rows)
                    .containsExactly(
                            Shipped.only(lower, "columns", Shipped::rows),
                            Shipped.only(upper, "columns", Shipped::rows));
            assertThat(semi.fullMarks()).isEqualTo(300);
            assertThat(semi.cites())
                    .filteredOn(cite -> cite.figures().contains(Figure.DIGITS))
                    .isNotEmpty()
                    .noneMatch(Cite::confirmed);
        }
    }

    @Test
    void minusRowsOfTenAreThreeOrFourByCustom() {
        Signs signs =
                ((Format.Columns) Shipped.formats(Shipped.grade(LADDER, "3"), "columns").getFirst())
                        .signs();

        assertThat(signs.minusRows()).isEqualTo(new Span(3, 4));
    }
}
