package tamabako.problems.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Golden.assertGolden;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tamabako.problems.Problem;
import tamabako.problems.grade.file.Ladders;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.making.Made;
import tamabako.problems.words.ProblemWords;

class PaperMakerTest {

    @Test
    void theSameSeedMakesTheSamePaperWhateverWasMadeBefore() {
        PaperMaker used = SamplePapers.maker("abacus-one-sheet", "1");
        for (int seed = 0; seed < 5; seed++) {
            PaperMaker fresh = SamplePapers.maker("abacus-one-sheet", "1");

            assertThat(SamplePapers.paper(used, seed)).isEqualTo(SamplePapers.paper(fresh, seed));
        }
    }

    @Test
    void aPaperIsTheSameOnEveryMachine() {
        Paper paper = SamplePapers.paper(SamplePapers.maker("abacus-one-sheet", "3"), 7);

        assertGolden(
                "paper.txt",
                paper.problems().stream()
                        .map(ProblemJson::line)
                        .collect(Collectors.joining("\n", "", "\n")));
    }

    @Test
    void theNameOfAPaperTellsNothingOfItsSeed() {
        PaperMaker maker = SamplePapers.maker("abacus-one-sheet", "8");
        PaperId one = SamplePapers.id(1);
        PaperId other = SamplePapers.id(2);

        Paper first = ((PaperMade.Found) maker.make(one, 3, List.of())).paper();
        Paper second = ((PaperMade.Found) maker.make(other, 3, List.of())).paper();

        assertThat(first.id()).isEqualTo(one.toString()).isNotEqualTo(second.id());
        assertThat(first.problems()).isEqualTo(second.problems());
    }

    @Test
    void noSumOfThePupilsLastTwoHundredComesAgain() {
        PaperMaker maker = SamplePapers.maker("mental-one-sheet", "6");
        List<Problem> last = new ArrayList<>();
        for (int seed = 0; last.size() < 200; seed++) {
            last.addAll(SamplePapers.paper(maker, seed).problems());
        }
        last = last.subList(0, 200);
        Set<String> had = new HashSet<>();
        last.forEach(problem -> had.add(SamplePapers.sum(problem)));
        for (int seed = 0; seed < 20; seed++) {
            Paper paper = ((PaperMade.Found) maker.make(SamplePapers.id(seed), seed, last)).paper();

            assertThat(paper.problems())
                    .noneMatch(problem -> had.contains(SamplePapers.sum(problem)));
            assertThat(PaperChecker.of(paper).complaints()).isEmpty();
        }
    }

    @Test
    void whatCannotBeSetIsToldInWords() {
        PaperMaker maker = SamplePapers.maker("first-steps", "step-2");
        List<Problem> last = new ArrayList<>();
        for (int seed = 0; seed < 30; seed++) {
            last.addAll(SamplePapers.paper(maker, seed).problems());
        }

        PaperMade made = maker.make(SamplePapers.id(1), 1, last);

        PaperMade.Reason reason = ((PaperMade.NotMade) made).reason();
        assertThat(reason).isInstanceOf(PaperMade.Reason.TooFewNew.class);
        assertThat(ProblemWords.of(Locale.ENGLISH).say(reason))
                .startsWith("The section \"practice\" needs 10 new problems, and only ");
    }

    @Test
    void theSetIdsAndReasonsAreSaidInBothLanguages() {
        StringBuilder said = new StringBuilder();
        for (Locale language : List.of(Locale.ENGLISH, Locale.JAPANESE)) {
            ProblemWords words = ProblemWords.of(language);
            for (String typed : List.of("7KMX-2P9T-HC4O", "7KMX-2P9T", "7KMX-2P9T-HC4R")) {
                if (PaperId.read(typed) instanceof PaperId.Read.Unknown(PaperId.Reason reason)) {
                    said.append(words.say(reason)).append('\n');
                }
            }
            said.append(words.say(new PaperMade.Reason.TooFewNew("columns", 7, 10))).append('\n');
            said.append(words.say(new PaperMade.Reason.TooFewForms("practice", 1, 10)))
                    .append('\n');
            said.append(words.say(new PaperMade.Reason.TooFewForms("practice", 3, 10)))
                    .append('\n');
            said.append(
                            words.say(
                                    new PaperMade.Reason.NoSuchProblems(
                                            "columns", new Made.Reason.NoneFound(100))))
                    .append('\n');
        }

        assertGolden("papers-said.txt", said.toString());
    }

    @Test
    void everyGradeOfEveryLadderHasItsTable() {
        Ladders.shipped()
                .forEach(ladder ->
                        ladder.grades()
                                .forEach(grade ->
                                        assertThat(PublishedPapers.of(ladder.id(), grade.id()))
                                                .as(ladder.id() + " " + grade.id())
                                                .isNotEmpty()));
    }
}
