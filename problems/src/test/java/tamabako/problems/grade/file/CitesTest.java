package tamabako.problems.grade.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tamabako.problems.grade.Beadwork;
import tamabako.problems.grade.Cite;
import tamabako.problems.grade.Figure;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Format.Answers;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.Section;

/// The source of each figure stands in the shipped files.
class CitesTest {

    @Test
    void everyFigureOfAShippedPaperHasASource() {
        for (Ladder ladder : Ladders.shipped()) {
            for (Grade grade : ladder.grades()) {
                Set<Figure> used = EnumSet.of(Figure.COUNT, Figure.POINTS, Figure.WRITING);
                used.add(grade.pass() instanceof Pass.ByScore ? Figure.RANKS : Figure.PASS);
                grade.time().ifPresent(_ -> used.add(Figure.TIME));
                assertThat(cited(grade.cites()))
                        .as(ladder.id() + " " + grade.id())
                        .containsAll(without(used, grade));
                grade.sections().forEach(section -> check(grade, section));
            }
        }
    }

    @Test
    void ourChoicesAndMemoryAreUnconfirmed() {
        for (Ladder ladder : Ladders.shipped()) {
            for (Grade grade : ladder.grades()) {
                for (Cite cite : grade.allCites()) {
                    String source = cite.source().in(Locale.ENGLISH);
                    boolean weak =
                            source.contains("our choice")
                                    || source.contains("from memory")
                                    || source.contains("no published source")
                                    || source.contains("Wikipedia");
                    assertThat(weak && cite.confirmed()).as(source).isFalse();
                    assertThat(cite.source().texts()).containsKey("ja");
                }
            }
        }
    }

    @Test
    void onlyTheBodyItselfOrAChamberConfirms() {
        Set<String> confirmed = new java.util.TreeSet<>();
        for (Ladder ladder : Ladders.shipped()) {
            for (Grade grade : ladder.grades()) {
                grade.allCites().stream()
                        .filter(Cite::confirmed)
                        .forEach(cite -> confirmed.add(cite.source().in(Locale.ENGLISH)));
            }
        }

        assertThat(confirmed)
                .allMatch(source ->
                        source.contains("shuzan.jp/kentei")
                                || source.contains("nagasakicci.jp")
                                || source.contains("www.fukuyama.or.jp"));
    }

    /// Figures that sections cite for themselves need not be cited with the paper.
    private static Set<Figure> without(Set<Figure> used, Grade grade) {
        if (grade.sections().stream().allMatch(s -> cited(s.cites()).contains(Figure.COUNT))) {
            used.remove(Figure.COUNT);
        }
        return used;
    }

    private static void check(Grade grade, Section section) {
        Set<Figure> used = EnumSet.noneOf(Figure.class);
        section.time().ifPresent(_ -> used.add(Figure.TIME));
        section.batches().forEach(batch -> add(batch.format(), used));
        Set<Figure> cited = cited(grade.cites());
        cited.addAll(cited(section.cites()));
        assertThat(cited).as(grade.id() + " " + section.id()).containsAll(used);
    }

    private static void add(Format format, Set<Figure> used) {
        switch (format) {
            case Format.Columns columns -> add(columns, used);
            case Format.Products products -> add(products.answers(), used);
            case Format.Quotients quotients -> add(quotients.answers(), used);
            case Format.Roots _ -> used.addAll(List.of(Figure.DEGREE, Figure.DIGITS));
            case Format.PadLines _ -> used.addAll(List.of(Figure.PAD, Figure.DIGITS));
            case Format.Stories _ -> used.add(Figure.LEVEL);
            case Format.Readings _ -> used.add(Figure.DIGITS);
        }
    }

    private static void add(Format.Columns columns, Set<Figure> used) {
        used.addAll(List.of(Figure.DIGITS, Figure.ROWS, Figure.SIGNS));
        if (columns.signs().mixed().count() > 0) {
            used.add(Figure.MINUS_ROWS);
        }
        if (columns.signs().negative().count() > 0) {
            used.add(Figure.NEGATIVE);
        }
        if (columns.amounts().places() > 0) {
            used.add(Figure.DECIMALS);
        }
        columns.amounts().unit().ifPresent(_ -> used.add(Figure.CURRENCY));
        if (!columns.beadwork().equals(Beadwork.ANY)) {
            used.add(Figure.TECHNIQUES);
        }
    }

    private static void add(Answers answers, Set<Figure> used) {
        used.addAll(List.of(Figure.DIGITS, Figure.SPLIT));
        answers.unit().ifPresent(_ -> used.add(Figure.CURRENCY));
        answers.rounded().ifPresent(_ -> used.add(Figure.ROUNDING));
        if (answers.decimals() > 0) {
            used.add(Figure.DECIMALS);
        }
    }

    private static Set<Figure> cited(List<Cite> cites) {
        Set<Figure> cited = EnumSet.noneOf(Figure.class);
        cites.forEach(cite -> cited.addAll(cite.figures()));
        return cited;
    }
}
