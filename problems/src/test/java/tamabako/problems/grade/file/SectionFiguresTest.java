package tamabako.problems.grade.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tamabako.problems.grade.Batch;
import tamabako.problems.grade.Elective;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Numbering;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.Section;
import tamabako.problems.grade.Span;

/// The papers section by section against the published tables. Sources: dan by six sections,
/// Japanese Wikipedia (日本珠算連盟主催段位認定試験), pachipachi-soroban.com/dani-kakezan and dani-warizan,
/// shikakusogo.com/minkanshikaku/anzannihon; abacus by sections, Japanese Wikipedia,
/// maedasoroban.com/assay.html, to-z.net/blog/7817, ishiharasoroban.com, shikaku.no-mania.com.
class SectionFiguresTest {

    private static final String LADDER = "abacus-by-sections";

    @Test
    void theDanOfSixSectionsIsAsPublished() {
        Grade dan = Shipped.grade("dan-six-sections", "dan");

        assertThat(Shipped.ranks(dan))
                .isEqualTo(
                        "jun-1 90, 1 100, jun-2 110, 2 120, jun-3 130, 3 140, 4 160, 5 180, 6 200, "
                                + "7 220, 8 240, 9 260, 10 290");
        assertThat(((Pass.ByScore) dan.pass()).scored()).isEqualTo(Pass.Scored.LOWEST_SECTION);
        assertThat(Shipped.counts(dan))
                .containsExactly(
                        "products 60x5",
                        "quotients 60x5",
                        "columns 30x10",
                        "mental-products 60x5",
                        "mental-quotients 60x5",
                        "mental-columns 30x10");
        assertThat(dan.sections()).extracting(Section::fullMarks).containsOnly(300);
        assertThat(Shipped.minutes(dan))
                .containsExactly(
                        "products 10",
                        "quotients 10",
                        "columns 10",
                        "mental-products 3",
                        "mental-quotients 3",
                        "mental-columns 4");
        assertThat(Shipped.only(dan, "products", Shipped::inAll)).isEqualTo(11);
        assertThat(Shipped.only(dan, "quotients", Shipped::inAll)).isEqualTo(10);
        assertThat(Shipped.only(dan, "mental-products", Shipped::inAll)).isEqualTo(6);
        assertThat(Shipped.only(dan, "mental-quotients", Shipped::inAll)).isEqualTo(6);
        assertThat(Shipped.only(dan, "columns", Shipped::rows)).isEqualTo("10x10");
        assertThat(Shipped.only(dan, "mental-columns", Shipped::rows)).isEqualTo("6x10");
        for (Batch batch : dan.section("columns").orElseThrow().batches()) {
            assertThat(batch.count()).isEqualTo(10);
            assertThat(((Format.Columns) batch.format()).signs().negative().count()).isOne();
        }
    }

    @Test
    void everyGradeBySectionsHas15ProblemsOf10PointsAnd100ToPass() {
        for (Grade grade : Ladders.ladder(LADDER).orElseThrow().grades()) {
            if (!grade.id().equals("dan")) {
                assertThat(grade.pass()).isEqualTo(new Pass.PointsInEach(100));
                assertThat(grade.sections()).allMatch(s -> s.count() == 15 && s.points() == 10);
            }
            assertThat(grade.numbering()).isEqualTo(Numbering.BY_SECTION);
        }
    }

    @Test
    void sectionsHaveTheTimesThatArePublished() {
        Map<String, Long> minutes = Map.of("mental", 3L, "stories", 10L);
        for (Grade grade : Ladders.ladder(LADDER).orElseThrow().grades()) {
            for (Section section : grade.sections()) {
                assertThat(section.time())
                        .contains(Duration.ofMinutes(minutes.getOrDefault(section.id(), 7L)));
            }
        }
    }

    @Test
    void theDigitsOfTheGradesAreThosePublished() {
        Map<String, String> products =
                Map.of("9", "3=2+1", "8", "4=3+1", "7", "4=2+2", "6", "5=3+2", "4", "7=3-5+2-4");
        products.forEach((id, digits) ->
                assertThat(Shipped.only(Shipped.grade(LADDER, id), "products", Shipped::pair))
                        .isEqualTo(digits));
        Map<String, String> quotients =
                Map.of(
                        "8",
                        "3=1+2",
                        "7",
                        "4=1+3",
                        "6",
                        "4=2+2",
                        "5",
                        "5=2-3+2-3",
                        "4",
                        "6-7=3+3-4");
        quotients.forEach((id, digits) ->
                assertThat(Shipped.only(Shipped.grade(LADDER, id), "quotients", Shipped::pair))
                        .isEqualTo(digits));
        Map<String, String> columns =
                Map.of(
                        "9", "1-2", "8", "2", "7", "2-3", "6", "2-3", "5", "3-4", "4", "3-5", "dan",
                        "5-11");
        columns.forEach((id, digits) ->
                assertThat(Shipped.only(Shipped.grade(LADDER, id), "columns", Shipped::rows))
                        .startsWith(digits + "x"));
    }

    @Test
    void fromSemiGrade3OnDigitsAreWithinThePublishedRangesAndTwoOfThreeSectionsAreChosen() {
        for (String id : List.of("jun-3", "3", "jun-2", "2", "jun-1", "1")) {
            Grade grade = Shipped.grade(LADDER, id);
            assertThat(grade.elective())
                    .contains(new Elective(2, List.of("slip-pad", "mental", "stories")));
            assertThat(grade.fullMarks()).isEqualTo(5 * 150);
            within(
                    ((Format.Products) Shipped.formats(grade, "products").getFirst()).inAll(),
                    7,
                    10);
            within(
                    ((Format.Quotients) Shipped.formats(grade, "quotients").getFirst()).inAll(),
                    6,
                    9);
            within(columns(grade).lengths().digits(), 2, 9);
            within(pad(grade).digits(), 2, 8);
            boolean negative = List.of("2", "jun-1", "1").contains(id);
            assertThat(columns(grade).signs().negative().count() > 0).isEqualTo(negative);
        }
    }

    @Test
    void tenAndTheDanOfTheSameBodyAreAsPublished() {
        Grade ten = Shipped.grade(LADDER, "10");
        assertThat(Shipped.only(ten, "columns-a", Shipped::rows)).isEqualTo("1x6");
        assertThat(Shipped.only(ten, "columns-b", Shipped::rows)).isEqualTo("1-2x4=6");

        Grade dan = Shipped.grade(LADDER, "dan");
        assertThat(Shipped.ranks(dan))
                .isEqualTo(
                        "jun-1 80, 1 100, 2 120, 3 140, 4 160, 5 180, 6 200, 7 220, 8 240, 9 260, "
                                + "10 280");
        assertThat(dan.sections()).extracting(Section::fullMarks).containsOnly(300);
        assertThat(dan.elective())
                .contains(new Elective(3, List.of("slip-pad", "mental", "stories", "roots")));
        assertThat(Shipped.only(dan, "products", Shipped::pair)).startsWith("11-12=");
        assertThat(Shipped.only(dan, "quotients", Shipped::pair)).startsWith("10-11=");
        assertThat(pad(dan).digits()).isEqualTo(new Span(4, 10));
    }

    @Test
    void aSlipPadHasEightLeavesAProblemAndFiveLinesALeaf() {
        for (String id : List.of("jun-3", "3", "jun-2", "2", "jun-1", "1", "dan")) {
            Format.PadLines pad = pad(Shipped.grade(LADDER, id));
            assertThat(pad.leaves()).isEqualTo(8);
            assertThat(pad.lines()).isEqualTo(5);
            assertThat(pad.padLeaves()).isGreaterThan(8);
        }
    }

    private static void within(Span digits, int least, int most) {
        assertThat(digits.least()).isGreaterThanOrEqualTo(least);
        assertThat(digits.most()).isLessThanOrEqualTo(most);
    }

    private static Format.Columns columns(Grade grade) {
        return (Format.Columns) Shipped.formats(grade, "columns").getFirst();
    }

    private static Format.PadLines pad(Grade grade) {
        return (Format.PadLines) Shipped.formats(grade, "slip-pad").getFirst();
    }
}
