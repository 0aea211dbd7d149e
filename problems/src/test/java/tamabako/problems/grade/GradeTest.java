package tamabako.problems.grade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tamabako.frame.Technique;
import tamabako.problems.Mode;
import tamabako.problems.marking.WritingRules;

class GradeTest {

    @Test
    void aLabelFallsBackToEnglish() {
        Label label = Label.of("Grade 3", "3級");

        assertThat(label.in(Locale.JAPAN)).isEqualTo("3級");
        assertThat(label.in(Locale.FRENCH)).isEqualTo("Grade 3");
        assertThatThrownBy(() -> new Label(Map.of("ja", "3級")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aSpanIsWrittenAsInAFile() {
        assertThat(new Span(3, 5)).hasToString("3-5");
        assertThat(Span.of(4)).hasToString("4");
        assertThat(new Span(3, 5).plus(new Span(2, 4))).isEqualTo(new Span(5, 9));
        assertThat(new Span(3, 5).holds(5)).isTrue();
        assertThat(new Span(3, 5).holds(6)).isFalse();
        assertThatThrownBy(() -> new Span(5, 3)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void lengthsKnowTheirRowsAndDigits() {
        Lengths.Table table = new Lengths.Table(new TreeMap<>(Map.of(4, 3, 3, 4, 2, 3)));

        assertThat(table.rows()).isEqualTo(10);
        assertThat(table.ji()).isEqualTo(30);
        assertThat(table.digits()).isEqualTo(new Span(2, 4));
        assertThat(new Lengths.Equal(10, 6).digits()).isEqualTo(Span.of(6));
        assertThatThrownBy(() -> new Lengths.InAll(5, new Span(1, 2), 11))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Lengths.Table(new TreeMap<>()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatCannotBeIsRefused() {
        Share four = Share.anywhere(4);
        Share five = Share.anywhere(5);

        assertThatThrownBy(() -> new Signs(four, Span.of(3), five, false))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Share(2, OptionalInt.of(3)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Elective(2, List.of("a", "b")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Batch(0, new Format.Stories("3")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() ->
                        new Beadwork(
                                EnumSet.of(Technique.DIRECT),
                                EnumSet.of(Technique.FIVE_COMPLEMENT),
                                false,
                                Beadwork.RunningOn.NEVER))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aShareInHalvesKnowsBoth() {
        assertThat(Share.halves(2, 1)).isEqualTo(new Share(3, OptionalInt.of(1)));
        assertThat(Share.halves(2, 1).inFirstHalf()).hasValue(2);
        assertThat(Share.anywhere(3).inFirstHalf()).isEmpty();
    }

    @Test
    void fullMarksCountWhatOnePupilSits() {
        Grade grade =
                grade(
                        Optional.of(new Elective(1, List.of("pad", "roots"))),
                        section("columns", 10, List.of()),
                        section("pad", 15, List.of()),
                        section("roots", 20, List.of()));

        assertThat(grade.fullMarks()).isEqualTo(10 * 10 + 20 * 10);
        assertThat(grade.isForAll(grade.section("columns").orElseThrow())).isTrue();
        assertThat(grade.isForAll(grade.section("pad").orElseThrow())).isFalse();
    }

    @Test
    void anUnconfirmedFigureOfASectionIsOneOfTheGrade() {
        Cite cite = new Cite(Set.of(Figure.ROWS), Label.of("our choice"), false);
        Grade grade =
                grade(
                        Optional.empty(),
                        section("columns", 10, List.of(cite)),
                        section("pad", 15, List.of(cite)));

        assertThat(grade.hasUnconfirmed()).isTrue();
        assertThat(grade.allCites()).containsExactly(cite);
        assertThat(grade(Optional.empty(), section("columns", 10, List.of())).hasUnconfirmed())
                .isFalse();
    }

    private static Grade grade(Optional<Elective> elective, Section... sections) {
        return new Grade(
                "1",
                Label.of("Grade 1"),
                List.of(sections),
                Optional.empty(),
                new Pass.Whole(100),
                Numbering.THROUGH,
                WritingRules.STRICT,
                elective,
                List.of());
    }

    private static Section section(String id, int count, List<Cite> cites) {
        Format format = new Format.Roots(2, Span.of(2));
        return new Section(
                id,
                Label.of(id),
                List.of(new Batch(count, format)),
                10,
                Optional.empty(),
                Mode.FRAME,
                Section.Order.AS_LISTED,
                cites);
    }
}
