package tamabako.problems.setting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.file.Ladders;

/// Papers of every shipped grade, each checked against the published tables, no two alike.
///
/// 30 of each as a rule; `-Dpapers=10000` sets and checks that many and says how far it is. Of that
/// many, `-Dgrades=...` takes the grades whose `ladder grade` matches an expression, and
/// `-Dworkers=1` one at a time.
class PaperCensusTest {

    private static final int USUAL = 30;
    private static final int PAPERS = Integer.getInteger("papers", USUAL);
    private static final String GRADES = System.getProperty("grades", ".*");
    private static final int WORKERS =
            Integer.getInteger("workers", Runtime.getRuntime().availableProcessors());

    /// What was counted of one grade.
    ///
    /// @param broken the papers with something wrong, with their seeds
    /// @param alike how many papers another seed had made already
    /// @param missing how many papers miss a custom of a whole section
    private record Count(String grade, List<String> broken, int alike, int missing, long millis) {}

    @Test
    void everySeedOfEveryGradeMakesAPaperInOrder() throws ExecutionException, InterruptedException {
        List<Count> counts = new ArrayList<>();
        try (ExecutorService workers = Executors.newFixedThreadPool(WORKERS)) {
            List<Future<Count>> running = new ArrayList<>();
            for (Ladder ladder : Ladders.shipped()) {
                for (Grade grade : ladder.grades()) {
                    if (name(ladder.id(), grade).matches(GRADES)) {
                        Callable<Count> task = () -> count(ladder.id(), grade);
                        running.add(workers.submit(task));
                    }
                }
            }
            for (Future<Count> count : running) {
                counts.add(count.get());
            }
        }

        boolean isWhole = GRADES.equals(".*");
        assertThat(counts).hasSizeGreaterThan(isWhole ? 50 : 0);
        assertThat(counts).allSatisfy(count -> assertThat(count.broken()).isEmpty());
        assertThat(counts).allSatisfy(count -> assertThat(count.alike()).isZero());
        // Of the papers of the one-sheet ladder few miss a custom: grades 8 to 1 have columns long
        // enough for different first digits.
        assertThat(counts)
                .filteredOn(count -> count.grade().matches("abacus-one-sheet (jun-)?\\d"))
                .hasSizeGreaterThanOrEqualTo(isWhole ? 11 : 0)
                .allSatisfy(count -> assertThat(count.missing()).isLessThan(PAPERS / 4));
    }

    private static Count count(String ladder, Grade grade) {
        long start = System.nanoTime();
        PaperMaker maker = PaperMaker.of(ladder, grade);
        List<String> broken = new ArrayList<>();
        Set<Integer> seen = new HashSet<>();
        int alike = 0;
        int missing = 0;
        for (int seed = 0; seed < PAPERS; seed++) {
            Paper paper = SamplePapers.paper(maker, seed);
            PaperChecker checker = PaperChecker.of(paper);
            if (!checker.complaints().isEmpty()) {
                broken.add("seed " + seed + ": " + checker.complaints());
            }
            alike += seen.add(paper.problems().hashCode()) ? 0 : 1;
            missing += checker.customsMissed().isEmpty() ? 0 : 1;
        }
        long millis = (System.nanoTime() - start) / 1_000_000;
        Count count = new Count(name(ladder, grade), broken, alike, missing, millis);
        tell(count);
        return count;
    }

    private static String name(String ladder, Grade grade) {
        return ladder + " " + grade.id();
    }

    private static void tell(Count count) {
        if (PAPERS > USUAL) {
            System.err.printf(
                    "%s: %d papers, %d wrong, %d alike, %d miss a custom, %.1f ms a paper%n",
                    count.grade(),
                    PAPERS,
                    count.broken().size(),
                    count.alike(),
                    count.missing(),
                    count.millis() / (double) PAPERS);
        }
    }
}
