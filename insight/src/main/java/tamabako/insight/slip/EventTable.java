package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.OptionalLong;
import java.util.Set;
import tamabako.problems.Mode;
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
    private final int[] endsOfWork;
    private final int[] order;
    private final int[] slots;
    private final int workAnswers;

    private EventTable(Problem problem, BigDecimal answer, int places, Events events) {
        this.problem = problem;
        this.answer = answer;
        this.places = places;
        this.events = events;
        this.occasions = events.occasions();
        Distinct distinct = new Distinct(events);
        this.differences = distinct.sorted();
        this.starts = new int[differences.length + 1];
        this.endsOfWork = new int[differences.length];
        this.order = new int[events.size()];
        this.slots = new int[events.size()];
        this.workAnswers = group(distinct.groups());
    }

    /// The slips of `problem`. A problem with numbers of more than sixteen digits has none.
    public static EventTable of(Problem problem) {
        return without(Set.of(), problem);
    }

    /// The slips of `problem` as they would be looked for without some parts of the finder.
    public static EventTable without(Set<Omission> omitted, Problem problem) {
        return new EventTable(
                problem,
                problem.answer().value(),
                ProblemSlips.places(problem) + 1,
                ProblemSlips.of(problem, omitted));
    }

    /// The slips of a part of `problem`, whose answer is `answer`.
    static EventTable ofPart(Problem problem, BigDecimal answer, int places, Events events) {
        return new EventTable(problem, answer, places, events);
    }

    /// The problem.
    public Problem problem() {
        return problem;
    }

    /// Whether it is worked in the head, shown or called, and not on the frame.
    public boolean inMind() {
        return problem.terms().mode() != Mode.FRAME;
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

    /// How many single slips lead to the answer `written`.
    public int slipsTo(BigDecimal written) {
        OptionalLong off = tenths(written);
        int group = off.isEmpty() ? -1 : group(off.getAsLong());
        return group < 0 ? 0 : starts[group + 1] - starts[group];
    }

    /// How many occasions the problem gives for slips of `kind`.
    public double occasions(SlipKind kind) {
        double sum = 0;
        for (int slot = Slot.of(kind); slot < Slot.after(kind); slot++) {
            sum += occasions[slot];
        }
        return sum;
    }

    /// How many steps the problem takes by `move`.
    public int steps(Move move) {
        return events.steps()[move.index()];
    }

    /// How many steps the problem takes that are in `cell`.
    public int steps(Cell cell) {
        return events.cells()[cell.index()];
    }

    /// The steps by index of their [Cell].
    int[] cells() {
        return events.cells();
    }

    /// The occasions by [Slot].
    double[] occasions() {
        return occasions;
    }

    /// The chance that nothing slips.
    double nothing(Rates rates) {
        double expected = 0;
        for (int slot = 0; slot < Slot.COUNT; slot++) {
            expected += occasions[slot] == 0 ? 0 : rates.ofSlot(slot) * occasions[slot];
        }
        return Math.exp(-expected);
    }

    /// How many different answers slips of the work, without those of the pencil, lead to.
    int workAnswers() {
        return workAnswers;
    }

    /// How many answers there are of the right answer's length.
    double answersOfItsLength() {
        return Math.pow(10, Math.max(1, answer.precision() - answer.scale() + places - 1));
    }

    /// How many decimal places the tenths of the answer's last place are.
    int places() {
        return places;
    }

    /// The group of the slips that leave the answer `tenths` off; -1 if none do.
    int group(long tenths) {
        return Math.max(-1, Arrays.binarySearch(differences, tenths));
    }

    /// How many tenths the slips of `group` leave the answer off.
    long tenths(int group) {
        return differences[group];
    }

    /// The place in the order of the first slip of `group`.
    int start(int group) {
        return starts[group];
    }

    /// The place after the last slip of the work in `group`; slips of the pencil follow.
    int endOfWork(int group) {
        return endsOfWork[group];
    }

    /// The place after the last slip of `group`.
    int end(int group) {
        return starts[group + 1];
    }

    /// The slip at a place in the order, as an index of [#events()].
    int at(int place) {
        return order[place];
    }

    /// The [Slot] of the slip at a place in the order.
    int slot(int place) {
        return slots[place];
    }

    /// Whether the slip at a place in the order is one of the hand.
    boolean isOfHand(int place) {
        return Slot.moveIndex(slots[place]) >= 0;
    }

    /// How often the slip at a place in the order is made.
    double chance(int place, Rates rates) {
        return rates.ofSlot(slots[place]) * events.weight(order[place]);
    }

    /// The slips that lead to `written`, as indexes of [#events()].
    int[] leadingTo(BigDecimal written) {
        OptionalLong off = tenths(written);
        int group = off.isEmpty() ? -1 : group(off.getAsLong());
        return group < 0 ? new int[0] : Arrays.copyOfRange(order, starts[group], starts[group + 1]);
    }

    Events events() {
        return events;
    }

    /// By how many tenths of the last place `written` is off; empty if it has more places.
    OptionalLong tenths(BigDecimal written) {
        BigDecimal off = written.subtract(answer).stripTrailingZeros();
        if (off.scale() > places || off.precision() - off.scale() + places > 18) {
            return OptionalLong.empty();
        }
        return OptionalLong.of(off.setScale(places).unscaledValue().longValueExact());
    }

    /// Counting sort by difference; slips of one difference keep their order, so that those of the
    /// pencil come last. Gives the number of groups with slips of the work.
    private int group(int[] groups) {
        for (int i = 0; i < groups.length; i++) {
            starts[groups[i] + 1]++;
        }
        for (int group = 0; group < differences.length; group++) {
            starts[group + 1] += starts[group];
        }
        int[] next = starts.clone();
        int withWork = 0;
        for (int i = 0; i < groups.length; i++) {
            if (i == events.ofWork()) {
                System.arraycopy(next, 0, endsOfWork, 0, endsOfWork.length);
            }
            int place = next[groups[i]]++;
            order[place] = i;
            slots[place] = Slot.of(events.code(i));
        }
        if (events.ofWork() == groups.length) {
            System.arraycopy(next, 0, endsOfWork, 0, endsOfWork.length);
        }
        for (int group = 0; group < endsOfWork.length; group++) {
            withWork += endsOfWork[group] > starts[group] ? 1 : 0;
        }
        return withWork;
    }
}
