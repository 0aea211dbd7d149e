package tamabako.insight.slip;

import java.util.Arrays;
import java.util.Set;

/// Collects the single slips that can be made in one problem.
///
/// Slips of one occasion are added one after another and then share it: between [#mark()] and
/// [#share(int, double)].
final class Events {

    /// As many as most problems have.
    private static final int ROOM = 1024;

    private static final int FEW = 8;

    private static final int MOVES = Move.values().length;

    /// No slip leaves the answer right, so this stands for all of them.
    private static final long ALL = 0;

    private long[] tenths;
    private long[] codes;
    private double[] weights;
    private int[] moments;
    private int[] steps = new int[0];
    private int[] cells = new int[0];
    private int size;
    private int ofWork;
    private final Set<Omission> omitted;
    private final long only;
    private double unseen;
    private int now;

    Events() {
        this(ROOM, Set.of());
    }

    /// Of slips that are looked for without some part of the finder.
    ///
    /// @param room for how many slips there is room at first, above 0
    Events(int room, Set<Omission> omitted) {
        this(room, omitted, ALL);
    }

    private Events(int room, Set<Omission> omitted, long only) {
        this.omitted = omitted;
        this.only = only;
        this.tenths = new long[room];
        this.codes = new long[room];
        this.weights = new double[room];
        this.moments = new int[room];
    }

    /// @param room for how many slips there is room at first, above 0
    Events(int room) {
        this(room, Set.of());
    }

    /// Of those slips only that leave the answer off by `tenths`, which is not 0. The others still
    /// have their part of their occasions.
    static Events toward(long tenths) {
        return new Events(FEW, Set.of(), tenths);
    }

    /// No slips.
    static Events none() {
        return new Events(FEW);
    }

    /// Whether this part of the finder is left out.
    boolean omit(Omission part) {
        return omitted.contains(part);
    }

    /// How many slips there are.
    int size() {
        return size;
    }

    /// By how much slip `i` changes the answer, in tenths of its last place.
    long tenths(int i) {
        return tenths[i];
    }

    /// The packed way and place of slip `i`.
    long code(int i) {
        return codes[i];
    }

    /// How many occasions of its kind slip `i` is worth: the chance that a slip of this kind, on
    /// its occasion, is this one.
    double weight(int i) {
        return weights[i];
    }

    /// What follows is made after the digit at `place` of a part of the sum; see [Moment].
    void after(int where, int place) {
        now = Moment.after(where, place);
    }

    /// When slip `i` is made; only columns tell.
    int moment(int i) {
        return moments[i];
    }

    /// Adds a slip. One that leaves the answer right is none, but has its part of the occasion.
    void add(long tenthsOff, long code, double weight) {
        if (tenthsOff == 0 || (only != ALL && tenthsOff != only)) {
            unseen += weight;
            return;
        }
        if (size == tenths.length) {
            tenths = Arrays.copyOf(tenths, 2 * size);
            codes = Arrays.copyOf(codes, 2 * size);
            weights = Arrays.copyOf(weights, 2 * size);
            moments = Arrays.copyOf(moments, 2 * size);
        }
        tenths[size] = tenthsOff;
        codes[size] = code;
        weights[size] = weight;
        moments[size] = now;
        size++;
    }

    /// Adds a slip with the shipped weight of its way.
    void add(long tenthsOff, long code) {
        add(tenthsOff, code, Weights.of(Code.way(code)));
    }

    /// Those of these slips that leave the answer off by `tenthsOff`, as they would be found alone.
    Events only(long tenthsOff) {
        Events found = toward(tenthsOff);
        for (int i = 0; i < size; i++) {
            if (tenths[i] == tenthsOff) {
                found.add(this, i);
            }
        }
        return found;
    }

    /// Adds slip `i` of all slips as it is there; those of the work come first.
    void add(Events all, int i) {
        now = all.moments[i];
        add(all.tenths[i], all.codes[i], all.weights[i]);
        if (i < all.ofWork) {
            workIsDone();
        }
    }

    /// Where the slips of the next occasion begin.
    int mark() {
        unseen = 0;
        return size;
    }

    /// Lets the slips since `mark` share one occasion that counts `worth`, by their weights. Those
    /// that leave the answer right take their part with them.
    void share(int mark, double worth) {
        double all = unseen;
        for (int i = mark; i < size; i++) {
            all += weights[i];
        }
        for (int i = mark; i < size; i++) {
            weights[i] *= worth / all;
        }
    }

    /// Notes a step of the hand that adds `digit` on a rod that holds `held`, where all slips are
    /// listed.
    void step(Move move, int held, int digit) {
        if (only != ALL) {
            return;
        }
        if (steps.length == 0) {
            steps = new int[MOVES];
            cells = new int[Cell.COUNT];
        }
        steps[move.index()]++;
        cells[Cell.index(held, digit)]++;
    }

    /// How many steps there are of each move, by its index.
    int[] steps() {
        return steps.length == 0 ? new int[MOVES] : steps;
    }

    /// How many steps there are of each [Cell], by its index.
    int[] cells() {
        return cells.length == 0 ? new int[Cell.COUNT] : cells;
    }

    /// What follows are slips of the pencil.
    void workIsDone() {
        ofWork = size;
    }

    /// How many slips, the first ones, are of the work and not of the pencil.
    int ofWork() {
        return ofWork;
    }

    /// How many occasions there are for each [Slot].
    double[] occasions() {
        double[] occasions = new double[Slot.COUNT];
        addOccasions(occasions);
        return occasions;
    }

    /// Adds how many occasions there are to those for each [Slot].
    void addOccasions(double[] occasions) {
        for (int i = 0; i < size; i++) {
            occasions[Slot.of(codes[i])] += weights[i];
        }
    }
}
