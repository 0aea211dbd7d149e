package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;

/// What may lead to one wrong answer, whatever the rates: single slips, two slips of the work, and
/// a slip of the work that the pencil made worse.
///
/// Two slips are looked for as if each changed the answer by what it does alone. That is exact but
/// where the second is of the hand and meets beads that the first has moved; where no single slip
/// leads to the answer, such pairs are worked out ([ExactPairs]), and where no pair does, three
/// slips are looked for ([Triples]). Two are not looked for where they explain more than one random
/// answer in twenty, as on short sums.
final class Explanations {

    /// Two slips are looked for if their answers are at most this part of all answers.
    private static final double BY_CHANCE = 0.05;

    private final EventTable table;
    private Events alone = Events.none();
    private int[] pairs = new int[32];
    private int size;
    private int[] before = new int[8];
    private long[] pencil = new long[8];
    private long[] pencilTenths = new long[8];
    private double[] pencilWeights = new double[8];
    private int pencils;
    private boolean exactly;
    private List<ExactPairs.Pair> exact = List.of();
    private List<Triples.Triple> triples = List.of();

    private Explanations(EventTable table) {
        this.table = table;
    }

    static Explanations of(EventTable table, BigDecimal written) {
        Explanations explanations = new Explanations(table);
        OptionalLong off = table.tenths(written);
        if (off.isPresent() && off.getAsLong() != 0) {
            explanations.alone = table.leadingTo(written);
            if (!table.omit(Omission.SEVERAL_SLIPS) && tellsPairs(table)) {
                explanations.addPairs(off.getAsLong());
                if (!table.omit(Omission.PENCIL)) {
                    explanations.addPencil(written);
                }
                explanations.addRare(off.getAsLong());
            }
        }
        return explanations;
    }

    /// Whether two slips at once say more than chance: of `n` differences, half of `n * n` pairs
    /// lead to answers of their own.
    static boolean tellsPairs(EventTable table) {
        double most = Math.sqrt(2 * BY_CHANCE * table.answersOfItsLength());
        return !table.hasMoreWorkAnswersThan(most);
    }

    private void addPairs(long tenths) {
        GroupedSlips slips = table.grouped();
        int low = 0;
        int high = slips.answers() - 1;
        while (low <= high) {
            long sum = slips.tenths(low) + slips.tenths(high);
            if (sum < tenths) {
                low++;
            } else if (sum > tenths) {
                high--;
            } else {
                if (ofWork(low) && ofWork(high)) {
                    addPair(low, high);
                }
                low++;
                high--;
            }
        }
    }

    private boolean ofWork(int group) {
        return table.endOfWork(group) > table.start(group);
    }

    private void addPair(int low, int high) {
        if (2 * size == pairs.length) {
            pairs = Arrays.copyOf(pairs, 2 * pairs.length);
        }
        pairs[2 * size] = low;
        pairs[2 * size + 1] = high;
        size++;
    }

    /// What no single slip leads to is worth more care.
    private void addRare(long tenths) {
        if (alone.size() > 0) {
            return;
        }
        exactly = ExactPairs.canFollow(table);
        exact = ExactPairs.of(table, tenths);
        if (exact.isEmpty() && pencils == 0 && !anyPair()) {
            triples = Triples.of(table, tenths);
        }
    }

    private boolean anyPair() {
        for (int i = 0; i < size; i++) {
            for (int one = table.start(low(i)); one < table.endOfWork(low(i)); one++) {
                for (int other = table.start(high(i)); other < table.endOfWork(high(i)); other++) {
                    if (addUp(one, other)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /// Whether the slips at two places of the table's order, each changing the answer by what it
    /// does alone, may be a pair that leads to it. Those that may not are among [#exact()] where
    /// they lead to it nevertheless.
    boolean addUp(int one, int other) {
        if (!exactly) {
            return true;
        }
        GroupedSlips slips = table.grouped();
        int first = slips.events().moment(slips.at(one));
        int second = slips.events().moment(slips.at(other));
        return first == second || !table.isOfHand(first < second ? other : one);
    }

    private void addPencil(BigDecimal written) {
        int places = table.places() - 1;
        if (Scaled.of(written, places).isEmpty() || Scaled.of(table.answer(), places).isEmpty()) {
            return;
        }
        long units = Scaled.of(written, places).orElseThrow().units();
        long right = Scaled.of(table.answer(), places).orElseThrow().units();
        for (long meant : PencilCauses.of(units)) {
            int group = meant == right ? -1 : table.group(10 * (meant - right));
            if (group >= 0 && ofWork(group)) {
                addPencil(group, meant, units);
            }
        }
    }

    private void addPencil(int group, long meant, long written) {
        long tenths = 10 * (written - meant);
        Events slips = Events.toward(tenths);
        new WrittenSlips(10 * meant, table.places(), slips).add(tenths);
        for (int i = 0; i < slips.size(); i++) {
            addPencil(group, slips.code(i), slips.tenths(i), slips.weight(i));
        }
    }

    private void addPencil(int group, long code, long tenths, double weight) {
        if (pencils == before.length) {
            before = Arrays.copyOf(before, 2 * pencils);
            pencil = Arrays.copyOf(pencil, 2 * pencils);
            pencilTenths = Arrays.copyOf(pencilTenths, 2 * pencils);
            pencilWeights = Arrays.copyOf(pencilWeights, 2 * pencils);
        }
        before[pencils] = group;
        pencil[pencils] = code;
        pencilTenths[pencils] = tenths;
        pencilWeights[pencils] = weight;
        pencils++;
    }

    /// The single slips that lead to the answer.
    Events alone() {
        return alone;
    }

    /// How many pairs of groups lead to it.
    int pairs() {
        return size;
    }

    /// The group of pair `i` that is further below.
    int low(int i) {
        return pairs[2 * i];
    }

    /// The other group of pair `i`; it may be the same.
    int high(int i) {
        return pairs[2 * i + 1];
    }

    /// How many slips of the pencil lead to it after a slip of the work.
    int pencils() {
        return pencils;
    }

    /// The group of the slip of the work before slip `i` of the pencil.
    int before(int i) {
        return before[i];
    }

    /// Slip `i` of the pencil, packed.
    long pencil(int i) {
        return pencil[i];
    }

    /// By how many tenths slip `i` of the pencil changes what stood on the frame.
    long pencilTenths(int i) {
        return pencilTenths[i];
    }

    /// How many occasions slip `i` of the pencil is worth.
    double pencilWeight(int i) {
        return pencilWeights[i];
    }

    /// The pairs that lead to it of which the second, a slip of the hand, meets the frame as the
    /// first has left it.
    List<ExactPairs.Pair> exact() {
        return exact;
    }

    /// The triples of groups that lead to it.
    List<Triples.Triple> triples() {
        return triples;
    }

    EventTable table() {
        return table;
    }
}
