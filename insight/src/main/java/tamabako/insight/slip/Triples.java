package tamabako.insight.slip;

import java.util.ArrayList;
import java.util.List;

/// Three slips of the work in one sum, each changing the answer by what it does alone: looked for
/// where nothing simpler leads to the answer, and only where three explain hardly any random one.
final class Triples {

    /// Three slips are looked for if their answers are at most this part of all answers.
    private static final double BY_CHANCE = 0.01;

    private static final double ORDERS = 6;

    private Triples() {}

    /// Three groups of slips, in their order; some may be the same.
    record Triple(int low, int middle, int high) {

        /// How many of the products of the three count: slips of one group have no order.
        double times() {
            if (low == high) {
                return 1 / ORDERS;
            }
            return low == middle || middle == high ? 0.5 : 1;
        }
    }

    /// The triples that leave the answer of `table` off by `tenths`.
    static List<Triple> of(EventTable table, long tenths) {
        List<Triple> triples = new ArrayList<>();
        GroupedSlips slips = table.grouped();
        int[] work = work(table);
        for (int low = 0; low < work.length && tells(table); low++) {
            long missing = tenths - slips.tenths(work[low]);
            int middle = low;
            int high = work.length - 1;
            while (middle <= high) {
                long sum = slips.tenths(work[middle]) + slips.tenths(work[high]);
                if (sum == missing) {
                    triples.add(new Triple(work[low], work[middle], work[high]));
                }
                middle += sum <= missing ? 1 : 0;
                high -= sum >= missing ? 1 : 0;
            }
        }
        return triples;
    }

    private static boolean tells(EventTable table) {
        double groups = table.workAnswers();
        return groups * groups * groups / ORDERS <= BY_CHANCE * table.answersOfItsLength();
    }

    /// The groups with slips of the work.
    private static int[] work(EventTable table) {
        int[] work = new int[table.workAnswers()];
        int found = 0;
        for (int group = 0; group < table.answers(); group++) {
            if (table.endOfWork(group) > table.start(group)) {
                work[found++] = group;
            }
        }
        return work;
    }
}
