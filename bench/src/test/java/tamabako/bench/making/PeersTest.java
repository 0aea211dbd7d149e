package tamabako.bench.making;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import tamabako.problems.Column;
import tamabako.problems.Terms;

class PeersTest {

    @Test
    void everySideMakesWhatIsAskedFor() {
        for (Task task : Task.values()) {
            assertGranted(task, Ours.maker(task), Ours.drawing(task));
            assertGranted(task, Solved.fresh(task), Solved.kept(task));
        }
        assertGranted(Task.DIRECT, Thrown.rows(Task.DIRECT));
        assertGranted(Task.RICH, Thrown.bag(Task.RICH));
        assertGranted(Task.BALANCED, Thrown.bag(Task.BALANCED));
    }

    @Test
    void whatIsNotAskedForIsSeen() {
        Hand hand = new Hand();
        long[] direct = Ours.drawing(Task.DIRECT).make(1).clone();
        assertThat(Task.DIRECT.isGrantedBy(direct, hand)).isTrue();
        assertThat(Task.RICH.isGrantedBy(direct, hand)).isFalse();
        long[] balanced = Ours.drawing(Task.BALANCED).make(1).clone();
        balanced[9] += balanced[9] % 10 == 9 ? -1 : 1;
        assertThat(Task.BALANCED.isGrantedBy(balanced, hand)).isFalse();
    }

    /// Held against the conditions of the wish, which share no code with the peers' checks.
    private static void assertGranted(Task task, Peer... peers) {
        Hand hand = new Hand();
        for (Peer peer : peers) {
            for (int i = 1; i <= 3; i++) {
                long[] rows = peer.make(i);
                assertThat(task.isGrantedBy(rows, hand)).as("%s %s", task, peer.name()).isTrue();
                List<BigDecimal> numbers =
                        Arrays.stream(rows).mapToObj(BigDecimal::valueOf).toList();
                assertThat(task.wish().missedBy(new Column("1", numbers, Terms.PLAIN)))
                        .as("%s %s", task, peer.name())
                        .isEmpty();
            }
        }
    }
}
