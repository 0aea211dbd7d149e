package tamabako.problems.making;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.making.draw.Powers;

/// Rows looked at digit by digit against every row tried out on the rods.
class LegalRowsTest {

    @Test
    void theLegalRowsAreThoseThatTheWalkAllows() {
        forSeeds(
                500,
                draw -> {
                    long total = draw.between(0, 3000);
                    int allowed = draw.between(1, 15);
                    boolean adding = draw.chance(1, 2);
                    int length = draw.between(1, 3);
                    Rods rods = new Rods(0);
                    Map<Long, Integer> tried = new TreeMap<>();
                    for (long row = Powers.of(length - 1); row < Powers.of(length); row++) {
                        if (adding || row <= total) {
                            rods.set(total);
                            int used = rods.work(adding ? row : -row);
                            if ((used & ~allowed) == 0) {
                                tried.put(row, used);
                            }
                        }
                    }

                    rods.set(total);
                    LegalRows legal = new LegalRows(rods, allowed, adding, length);
                    Map<Long, Integer> found = new TreeMap<>();
                    legal.forEach(found::put);

                    assertThat(found).isEqualTo(tried);
                    long[] ways = legal.count()[length];
                    assertThat(ways[0] + ways[1]).isEqualTo(tried.size());
                });
    }

    @Test
    void everyLegalRowIsDrawnAboutEquallyOften() {
        Rods rods = new Rods(0);
        rods.set(47);
        LegalRows legal = new LegalRows(rods, 15, true, 2);
        long[][] ways = legal.count();
        Draws draws = new Draws(5);
        Map<Long, Integer> drawn = new TreeMap<>();
        for (int i = 0; i < 90_000; i++) {
            drawn.merge(legal.draw(ways, draws), 1, Integer::sum);
        }

        assertThat(drawn).hasSize(90);
        // Five standard deviations of a count with mean 1000.
        assertThat(drawn.values()).allSatisfy(times -> assertThat(times).isBetween(842, 1158));
    }
}
