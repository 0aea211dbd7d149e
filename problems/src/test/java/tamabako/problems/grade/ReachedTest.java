package tamabako.problems.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.problems.grade.file.Ladders;

/// What points come to by the rules of the shipped ladders (their sources stand in their files).
class ReachedTest {

    private static Grade grade(String ladder, String id) {
        return Ladders.ladder(ladder).orElseThrow().grade(id).orElseThrow();
    }

    /// The same points in every section, but for one.
    private static Map<String, Integer> points(Grade grade, int usual, int first) {
        Map<String, Integer> points = new HashMap<>();
        grade.sections().forEach(section -> points.put(section.id(), usual));
        points.put(grade.sections().getFirst().id(), first);
        return points;
    }

    @ParameterizedTest
    @CsvSource({"300, 290, 10", "90, 300, jun-1", "130, 119, jun-2", "120, 120, 2", "300, 89, ''"})
    void theLowestSectionTellsTheDan(int usual, int first, String rank) {
        Grade dan = grade("dan-six-sections", "dan");

        Reached reached = Reached.of(dan, points(dan, usual, first)).orElseThrow();

        assertThat(reached.rank().map(Pass.Rank::id))
                .isEqualTo(Optional.of(rank).filter(id -> !id.isEmpty()));
        assertThat(reached.passed()).isEqualTo(!rank.isEmpty());
    }

    @Test
    void aSheetIsPassedByItsPointsTogether() {
        Grade sheet = grade("abacus-one-sheet", "3");
        assertThat(sheet.pass()).isInstanceOf(Pass.Whole.class);
        int least = ((Pass.Whole) sheet.pass()).points();
        int others = sheet.sections().size() - 1;

        assertThat(Reached.of(sheet, points(sheet, 0, least)).orElseThrow().passed()).isTrue();
        assertThat(Reached.of(sheet, points(sheet, 0, least - 1)).orElseThrow().passed()).isFalse();
        assertThat(Reached.of(sheet, points(sheet, 1, least - others)).orElseThrow().passed())
                .isTrue();
    }

    @Test
    void withoutASectionThatHasToBeSatNothingIsTold() {
        Grade dan = grade("dan-six-sections", "dan");
        Map<String, Integer> points = points(dan, 100, 100);
        points.remove("products");

        assertThat(Reached.of(dan, points)).isEmpty();
    }

    @Test
    void ofSectionsToChooseFromTheBestCount() {
        Grade grade = grade("abacus-by-sections", "3");
        Elective elective = grade.elective().orElseThrow();
        int least = ((Pass.PointsInEach) grade.pass()).points();
        Map<String, Integer> points = points(grade, least, least);
        elective.of().stream().skip(elective.choose()).forEach(section -> points.put(section, 0));

        assertThat(Reached.of(grade, points).orElseThrow().passed()).isTrue();
        points.put(elective.of().getFirst(), 0);
        assertThat(Reached.of(grade, points).orElseThrow().passed()).isFalse();
        elective.of().forEach(points::remove);
        assertThat(Reached.of(grade, points)).isEmpty();
    }
}
