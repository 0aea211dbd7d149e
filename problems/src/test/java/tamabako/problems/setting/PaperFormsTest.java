package tamabako.problems.setting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tamabako.frame.Setup;
import tamabako.frame.Technique;
import tamabako.frame.Trace;
import tamabako.frame.Working;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.effort.Effort;

class PaperFormsTest {

    private static final int FORMS = 10;
    private static final long SEED = 1;
    private static final Map<List<String>, FormsMade.Found> MADE = new HashMap<>();

    /// Ladders and grades of every sort of section.
    private static final List<List<String>> GRADES =
            List.of(
                    List.of("abacus-one-sheet", "1"),
                    List.of("abacus-one-sheet", "4"),
                    List.of("abacus-one-sheet", "9-10"),
                    List.of("abacus-by-sections", "1"),
                    List.of("abacus-by-sections", "10"),
                    List.of("mental-one-sheet", "3"),
                    List.of("mental-row-tables", "5"),
                    List.of("first-steps", "step-13"));

    @Test
    void tenFormsAreWithinTwoThousandthsInStrokesAndTime() {
        for (List<String> grade : GRADES) {
            FormReport report = forms(grade).report();

            assertThat(report.spreadOfStrokes()).as("strokes of " + grade).isLessThan(0.002);
            assertThat(report.spreadOfSeconds()).as("seconds of " + grade).isLessThan(0.002);
        }
    }

    @Test
    void longPapersAreCloseInEveryTechniqueAndEverySectionToo() {
        FormReport report = forms(List.of("abacus-one-sheet", "1")).report();

        for (Technique technique : Technique.values()) {
            assertThat(report.spreadOf(technique)).as(technique.word()).isLessThan(0.05);
        }
        for (int i = 0; i < 3; i++) {
            int section = i;
            var strokes =
                    report.forms().stream()
                            .mapToInt(
                                    form -> form.sections().get(section).load().effort().strokes())
                            .summaryStatistics();
            assertThat(strokes.getMax() - strokes.getMin())
                    .isLessThan((int) (0.03 * strokes.getAverage()));
        }
    }

    @Test
    void everyFormIsAPaperInOrderAndNoSumStandsInTwo() {
        for (List<String> grade : GRADES) {
            List<Paper> papers = forms(grade).papers();
            Set<String> seen = new HashSet<>();
            for (Paper paper : papers) {
                assertThat(PaperChecker.of(paper).complaints()).as(grade.toString()).isEmpty();
                paper.problems()
                        .forEach(problem ->
                                assertThat(seen.add(SamplePapers.sum(problem))).isTrue());
            }
            assertThat(papers)
                    .extracting(Paper::form)
                    .containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
            assertThat(papers).extracting(Paper::id).doesNotHaveDuplicates();
        }
    }

    @Test
    void swapsBreakNoCustomOfASection() {
        for (Paper paper : forms(List.of("abacus-one-sheet", "1")).papers()) {
            assertThat(PaperChecker.of(paper).customsMissed()).as("form " + paper.form()).isEmpty();
        }
    }

    @Test
    void theReportCountsWhatTheTracesHold() {
        FormsMade.Found made = forms(List.of("abacus-one-sheet", "3"));
        Paper paper = made.papers().getFirst();
        List<Trace> traces = new ArrayList<>();
        for (Problem problem : paper.problems()) {
            Working working = problem.work(Setup.COMMON);
            traces.add(working.setting());
            traces.add(working.trace());
        }
        long strokes =
                traces.stream()
                        .flatMap(trace -> trace.steps().stream())
                        .mapToLong(step -> step.strokes().size())
                        .sum();

        Effort effort = made.report().forms().getFirst().whole().effort();

        assertThat(effort.strokes()).isEqualTo((int) strokes);
        for (Technique technique : Technique.values()) {
            long steps =
                    traces.stream()
                            .flatMap(trace -> trace.steps().stream())
                            .filter(step -> step.technique() == technique)
                            .count();
            assertThat(effort.count(technique)).isEqualTo((int) steps);
        }
    }

    @Test
    void theSameSeedMakesTheSameForms() {
        List<String> grade = List.of("abacus-one-sheet", "8");

        assertThat(made(grade).papers()).isEqualTo(made(grade).papers());
    }

    @Test
    void otherFeaturesCanBeAskedFor() {
        FormFeature rows =
                new FormFeature(
                        (problems, _) ->
                                problems.stream()
                                        .filter(Column.class::isInstance)
                                        .mapToInt(problem -> 1)
                                        .sum(),
                        true,
                        0.001,
                        0.1);
        PaperForms forms = PaperForms.of(SamplePapers.maker("abacus-one-sheet", "8"));

        FormsMade made =
                forms.equalIn(List.of(FormFeature.SECONDS, rows)).make(ids(4), 6, List.of());

        assertThat(((FormsMade.Found) made).report().spreadOfSeconds()).isLessThan(0.002);
    }

    @Test
    void whereThereAreSumsForFewerFormsOnlyItIsToldForHowMany() {
        PaperForms forms = PaperForms.of(SamplePapers.maker("first-steps", "step-2"));

        FormsMade.NotMade made = (FormsMade.NotMade) forms.make(ids(10), 1, List.of());

        PaperMade.Reason.TooFewForms reason = (PaperMade.Reason.TooFewForms) made.reason();
        assertThat(reason.section()).isEqualTo("practice");
        assertThat(reason.made()).isBetween(1, 9);
        assertThat(reason.asked()).isEqualTo(10);
        assertThat(forms.make(ids(reason.made()), 1, List.of()))
                .isInstanceOf(FormsMade.Found.class);
    }

    /// Forms that several tests look at.
    private static FormsMade.Found forms(List<String> grade) {
        return MADE.computeIfAbsent(grade, PaperFormsTest::made);
    }

    private static FormsMade.Found made(List<String> grade) {
        PaperMaker maker = SamplePapers.maker(grade.get(0), grade.get(1));
        return (FormsMade.Found) PaperForms.of(maker).make(ids(FORMS), SEED, List.of());
    }

    private static List<PaperId> ids(int count) {
        return IntStream.range(0, count).mapToObj(SamplePapers::id).toList();
    }
}
