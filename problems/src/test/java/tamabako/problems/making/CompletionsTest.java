package tamabako.problems.making;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.frame.Technique.DIRECT;
import static tamabako.frame.Technique.FIVE_COMPLEMENT;
import static tamabako.testkit.Property.forSeeds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import tamabako.frame.Technique;
import tamabako.problems.making.draw.Draws;

/// The weighing against every column written out and walked.
class CompletionsTest {

    @Test
    void theListedColumnsAreAllThatGrantTheWish() {
        forSeeds(
                200,
                draw -> {
                    Set<Technique> allowed = Columns.drawTechniques(draw);
                    allowed.add(draw.oneOf(List.of(Technique.values())));
                    Set<Technique> required = Columns.drawTechniques(draw);
                    required.retainAll(allowed);
                    int rows = draw.between(2, 4);
                    PlainColumns wish =
                            PlainColumns.of(rows, 1)
                                    .withMinusRows(draw.between(0, rows - 1))
                                    .allowing(allowed)
                                    .requiring(required);
                    boolean lastIsPlus = draw.chance(1, 2);
                    Asked asked = Asked.of(wish, lastIsPlus);

                    Completions completions = Completions.of(asked).orElseThrow();

                    Set<String> written = new TreeSet<>();
                    writeOut(new long[rows], 0, asked, written);
                    assertThat(lines(completions.all(100_000))).isEqualTo(written);
                    assertThat(completions.any()).isEqualTo(!written.isEmpty());
                });
    }

    @Test
    void everyColumnIsDrawnAboutEquallyOften() {
        PlainColumns wish =
                PlainColumns.of(3, 1)
                        .withMinusRows(1)
                        .allowing(DIRECT, FIVE_COMPLEMENT)
                        .requiring(FIVE_COMPLEMENT);
        Completions completions = Completions.of(Asked.of(wish, false)).orElseThrow();
        int there = completions.all(10_000).size();
        Draws draws = new Draws(11);
        Map<String, Integer> drawn = new TreeMap<>();
        for (int i = 0; i < 1000 * there; i++) {
            drawn.merge(Arrays.toString(completions.draw(draws).orElseThrow()), 1, Integer::sum);
        }

        assertThat(drawn).hasSize(there);
        // Five standard deviations of a count with mean 1000.
        assertThat(drawn.values()).allSatisfy(times -> assertThat(times).isBetween(842, 1158));
    }

    @Test
    void wholeColumnsAreDrawnAsEvenly() {
        PlainColumns wish =
                PlainColumns.of(3, 1)
                        .withMinusRows(1)
                        .allowing(DIRECT, FIVE_COMPLEMENT)
                        .requiring(FIVE_COMPLEMENT);
        Asked asked = Asked.of(wish, false);
        WholeColumns whole = new WholeColumns(asked);
        long different =
                Completions.of(asked).orElseThrow().all(10_000).stream()
                        .filter(rows -> Asked.repeats(rows) == 0)
                        .count();
        Draws draws = new Draws(12);
        Map<String, Integer> drawn = new TreeMap<>();
        for (int i = 0; i < 1000 * different; ) {
            var rows = whole.draw(draws);
            if (rows.isPresent()) {
                drawn.merge(Arrays.toString(rows.get()), 1, Integer::sum);
                i++;
            }
        }

        assertThat(drawn).hasSize((int) different);
        assertThat(drawn.values()).allSatisfy(times -> assertThat(times).isBetween(842, 1158));
    }

    private static void writeOut(long[] rows, int row, Asked asked, Set<String> written) {
        if (row == rows.length) {
            if (grants(rows, asked)) {
                written.add(Arrays.toString(rows));
            }
            return;
        }
        for (long size = 1; size <= 9; size++) {
            for (long signed : new long[] {size, -size}) {
                rows[row] = signed;
                writeOut(rows, row + 1, asked, written);
            }
        }
    }

    private static boolean grants(long[] rows, Asked asked) {
        long minus = Arrays.stream(rows).filter(row -> row < 0).count();
        if (rows[0] < 0
                || minus != asked.wish().minusRows()
                || (asked.lastIsPlus() && rows[rows.length - 1] < 0)) {
            return false;
        }
        Rods rods = new Rods(0);
        rods.set(rows[0]);
        int used = 0;
        for (int i = 1; i < rows.length; i++) {
            if (rods.total() + rows[i] < 0) {
                return false;
            }
            used |= rods.work(rows[i]);
        }
        return (used & ~asked.allowed()) == 0 && (used & asked.required()) == asked.required();
    }

    private static Set<String> lines(List<long[]> columns) {
        List<String> lines = new ArrayList<>();
        columns.forEach(rows -> lines.add(Arrays.toString(rows)));
        assertThat(lines).doesNotHaveDuplicates();
        return new TreeSet<>(lines);
    }
}
