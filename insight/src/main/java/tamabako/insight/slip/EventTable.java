package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.OptionalLong;
import tamabako.problems.Problem;

/// The single slips of one problem, grouped by how far off they leave the answer.
///
/// Made once for a problem, it serves all pupils who worked it.
public final class EventTable {

    private final Problem problem;
    private final BigDecimal answer;
    private final int places;
    private final Events events;
    private final double[] occasions;
    private final long[] differences;
    private final int[] starts;
    private final int[] order;

    private EventTable(Problem problem) {
        this.problem = problem;
        this.answer = problem.answer().value();
        this.places = ProblemSlips.places(problem) + 1;
        this.events = ProblemSlips.of(problem);
        this.occasions = events.occasions();
        this.differences = distinct(events);
        this.starts = new int[differences.length + 1];
        this.order = new int[events.size()];
        group();
    }

    /// The slips of `problem`. A problem with numbers of more than sixteen digits has none.
    public static EventTable of(Problem problem) {
        return new EventTable(problem);
    }

    /// The problem.
    public Problem problem() {
        return problem;
    }

    /// The right answer.
    public BigDecimal answer() {
        return answer;
    }

    /// How many slips there are.
    public int slips() {
        return order.length;
    }

    /// How many wrong answers they lead to.
    public int answers() {
        return differences.length;
    }

    /// How many occasions the problem gives for slips of `kind`.
    public double occasions(SlipKind kind) {
        return occasions[kind.index()];
    }

    /// The slips that lead to `written`, as indexes of [#events()].
    int[] leadingTo(BigDecimal written) {
        OptionalLong tenths = tenths(written);
        int group = tenths.isEmpty() ? -1 : Arrays.binarySearch(differences, tenths.getAsLong());
        return group < 0 ? new int[0] : Arrays.copyOfRange(order, starts[group], starts[group + 1]);
    }

    Events events() {
        return events;
    }

    private OptionalLong tenths(BigDecimal written) {
        BigDecimal off = written.subtract(answer).stripTrailingZeros();
        if (off.scale() > places || off.precision() - off.scale() + places > 18) {
            return OptionalLong.empty();
        }
        return OptionalLong.of(off.setScale(places).unscaledValue().longValueExact());
    }

    private static long[] distinct(Events events) {
        long[] sorted = new long[events.size()];
        for (int i = 0; i < sorted.length; i++) {
            sorted[i] = events.tenths(i);
        }
        Arrays.sort(sorted);
        int kept = 0;
        for (int i = 0; i < sorted.length; i++) {
            if (i == 0 || sorted[i] != sorted[i - 1]) {
                sorted[kept++] = sorted[i];
            }
        }
        return Arrays.copyOf(sorted, kept);
    }

    /// Counting sort by difference; slips of one difference keep their order.
    private void group() {
        int[] groups = new int[order.length];
        for (int i = 0; i < groups.length; i++) {
            groups[i] = Arrays.binarySearch(differences, events.tenths(i));
            starts[groups[i] + 1]++;
        }
        for (int group = 0; group < differences.length; group++) {
            starts[group + 1] += starts[group];
        }
        int[] next = starts.clone();
        for (int i = 0; i < groups.length; i++) {
            order[next[groups[i]]++] = i;
        }
    }
}
