package tamabako.problems.setting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.file.Ladders;
import tamabako.problems.setting.json.PaperJson;

/// Papers set with and without what setters keep to besides the rules.
class SettersCustomsTest {

    private static final int SEEDS = 4;

    @Test
    void withoutTheCustomsPapersOfEveryGradeStillKeepItsTable() {
        for (Ladder ladder : Ladders.shipped()) {
            for (Grade grade : ladder.grades()) {
                PaperMaker maker = PaperMaker.of(ladder.id(), grade, SettersCustoms.LEFT_OUT);
                for (int seed = 0; seed < SEEDS; seed++) {
                    Paper paper = SamplePapers.paper(maker, seed);

                    assertThat(paper.customs()).isEqualTo(SettersCustoms.LEFT_OUT);
                    assertThat(PaperChecker.of(paper).complaints())
                            .as("%s %s, seed %d", ladder.id(), grade.id(), seed)
                            .isEmpty();
                }
            }
        }
    }

    @Test
    void aMakerKeepsTheCustomsUnlessItIsToldOtherwise() {
        for (int seed = 0; seed < SEEDS; seed++) {
            Paper paper = SamplePapers.paper(SamplePapers.maker("abacus-one-sheet", "2"), seed);

            assertThat(paper.customs()).isEqualTo(SettersCustoms.KEPT);
            assertThat(PaperChecker.of(paper).customsBroken()).isEmpty();
            assertThat(PaperChecker.of(paper).customsMissed()).isEmpty();
        }
    }

    @Test
    void withoutTheCustomsColumnsAndFactorsBreakThem() {
        PaperMaker maker = withoutCustoms("abacus-one-sheet", "2");
        Set<String> broken = new HashSet<>();
        Set<String> missed = new HashSet<>();
        for (int seed = 0; seed < 30; seed++) {
            PaperChecker checker = PaperChecker.of(SamplePapers.paper(maker, seed));
            broken.addAll(checker.customsBroken());
            missed.addAll(checker.customsMissed());
        }

        assertThat(broken).anyMatch(said -> said.contains("begins alike"));
        assertThat(broken).anyMatch(said -> said.contains("taken running"));
        assertThat(missed).anyMatch(said -> said.contains("answers begin with"));
        assertThat(missed).anyMatch(said -> said.contains("multiplied"));
        assertThat(missed).anyMatch(said -> said.contains("inner zero"));
    }

    @Test
    void formsWithoutTheCustomsAreEqualAndInOrderToo() {
        FormsMade made =
                PaperForms.of(withoutCustoms("abacus-one-sheet", "4"))
                        .make(
                                IntStream.range(0, 4).mapToObj(SamplePapers::id).toList(),
                                3,
                                List.of());

        FormsMade.Found found = (FormsMade.Found) made;
        assertThat(found.report().spreadOfStrokes()).isLessThan(0.002);
        assertThat(found.papers())
                .allSatisfy(paper -> {
                    assertThat(paper.customs()).isEqualTo(SettersCustoms.LEFT_OUT);
                    assertThat(PaperChecker.of(paper).complaints()).isEmpty();
                });
    }

    @Test
    void aPaperRemembersInJsonWhetherItKeepsTheCustoms() {
        for (SettersCustoms customs : SettersCustoms.values()) {
            Grade grade =
                    Ladders.ladder("abacus-by-sections").orElseThrow().grade("6").orElseThrow();
            PaperMaker maker = PaperMaker.of("abacus-by-sections", grade, customs);
            Paper paper = SamplePapers.paper(maker, 1);

            String line = PaperJson.line(paper);

            assertThat(PaperJson.parse(line, grade)).isEqualTo(paper);
            assertThat(line.contains("\"customs\":false"))
                    .isEqualTo(customs == SettersCustoms.LEFT_OUT);
        }
    }

    private static PaperMaker withoutCustoms(String ladder, String grade) {
        return PaperMaker.of(
                ladder,
                Ladders.ladder(ladder).orElseThrow().grade(grade).orElseThrow(),
                SettersCustoms.LEFT_OUT);
    }
}
