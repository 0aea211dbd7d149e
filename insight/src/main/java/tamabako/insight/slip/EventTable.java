package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.Problem;

/// The single slips of one problem, grouped by how far off they leave the answer.
///
/// They are listed when they are first asked for all together, as pairs of slips are looked for;
/// which slips lead to one answer to a column is found without ([#slipsTo]). A table serves all
/// pupils who worked its problem, and threads may share it.
public final class EventTable {

    private final Problem problem;
    private final Set<Omission> omitted;
    private final BigDecimal answer;
    private final int places;
    private volatile Optional<Tally> tally = Optional.empty();
    private volatile Optional<Events> events;
    private volatile Optional<GroupedSlips> grouped = Optional.empty();

    private EventTable(
            Problem problem,
            Set<Omission> omitted,
            BigDecimal answer,
            int places,
            Optional<Events> events) {
        this.problem = problem;
        this.omitted = omitted;
        this.answer = answer;
        this.places = places;
        this.events = events;
    }

    /// The slips of `problem`. A problem with numbers of more than sixteen digits has none.
    public static EventTable of(Problem problem) {
        return without(Set.of(), problem);
    }

    /// The slips of `problem` as they would be looked for without some parts of the finder.
    public static EventTable without(Set<Omission> omitted, Problem problem) {
        return new EventTable(
                problem,
                omitted,
                problem.answer().value(),
                ProblemSlips.places(problem) + 1,
                Optional.empty());
    }

    /// The slips of a part of `problem`, whose answer is `answer`.
    static EventTable ofPart(Problem problem, BigDecimal answer, int places, Events events) {
        return new EventTable(problem, Set.of(), answer, places, Optional.of(events));
    }

    /// All slips. Two threads that are first may both list them, and find the same.
    Events events() {
        Optional<Events> known = events;
        if (known.isEmpty()) {
            known = Optional.of(ProblemSlips.of(problem, omitted));
            events = known;
        }
        return known.get();
    }

    /// All slips by their differences.
    GroupedSlips grouped() {
        Optional<GroupedSlips> known = grouped;
        if (known.isEmpty()) {
            known = Optional.of(new GroupedSlips(events()));
            grouped = known;
        }
        return known.get();
    }

    private Tally tally() {
        Optional<Tally> known = tally;
        if (known.isEmpty()) {
            known =
                    events.map(Tally::of)
                            .or(() -> Tally.of(problem, omitted))
                            .or(() -> Optional.of(Tally.of(events())));
            tally = known;
        }
        return known.get();
    }

    /// The problem.
    public Problem problem() {
        return problem;
    }

    /// Whether it is worked in the head, shown or called, and not on the frame.
    public boolean inMind() {
        return problem.terms().mode() != Mode.FRAME;
    }

    /// Whether this part of the finder is left out.
    boolean omit(Omission part) {
        return omitted.contains(part);
    }

    /// The right answer.
    public BigDecimal answer() {
        return answer;
    }

    /// How many slips there are.
    public int slips() {
        return events().size();
    }

    /// How many wrong answers they lead to.
    public int answers() {
        return grouped().answers();
    }

    /// How many single slips lead to the answer `written`.
    public int slipsTo(BigDecimal written) {
        OptionalLong off = tenths(written);
        Optional<GroupedSlips> known = grouped;
        if (off.isEmpty() || known.isEmpty()) {
            return leadingTo(written).size();
        }
        GroupedSlips slips = known.get();
        int group = slips.group(off.getAsLong());
        return group < 0 ? 0 : slips.end(group) - slips.start(group);
    }

    /// The single slips that lead to the answer `written`.
    Events leadingTo(BigDecimal written) {
        OptionalLong off = tenths(written);
        return off.isEmpty() || off.getAsLong() == 0 ? Events.none() : toward(off.getAsLong());
    }

    private Events toward(long tenths) {
        return grouped.map(slips -> slips.only(tenths))
                .or(() -> events.map(all -> all.only(tenths)))
                .or(() -> ProblemSlips.toward(problem, omitted, tenths))
                .orElseGet(() -> events().only(tenths));
    }

    /// How many occasions the problem gives for slips of `kind`.
    public double occasions(SlipKind kind) {
        double sum = 0;
        double[] occasions = occasions();
        for (int slot = Slot.of(kind); slot < Slot.after(kind); slot++) {
            sum += occasions[slot];
        }
        return sum;
    }

    /// How many steps the problem takes by `move`.
    public int steps(Move move) {
        return steps()[move.index()];
    }

    /// How many steps the problem takes that are in `cell`.
    public int steps(Cell cell) {
        return cells()[cell.index()];
    }

    /// The steps by index of their [Move].
    int[] steps() {
        return tally().steps();
    }

    /// The steps by index of their [Cell].
    int[] cells() {
        return tally().cells();
    }

    /// The occasions by [Slot].
    double[] occasions() {
        return tally().occasions();
    }

    /// The chance that nothing slips.
    double nothing(Rates rates) {
        double[] occasions = occasions();
        double expected = 0;
        for (int slot = 0; slot < Slot.COUNT; slot++) {
            expected += occasions[slot] == 0 ? 0 : rates.ofSlot(slot) * occasions[slot];
        }
        return Math.exp(-expected);
    }

    /// How many different answers slips of the work, without those of the pencil, lead to.
    int workAnswers() {
        return grouped().workAnswers();
    }

    /// Whether slips of the work lead to more than `most` different answers. On short columns the
    /// misread digits alone are more, and nothing has to be listed.
    boolean hasMoreWorkAnswersThan(double most) {
        return (omitted.isEmpty() && events.isEmpty() && misreadings() > most)
                || workAnswers() > most;
    }

    private int misreadings() {
        return problem instanceof Column column && !inMind()
                ? UnitRows.of(column).map(UnitRows::answersOfMisreading).orElse(0)
                : 0;
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
        return grouped().group(tenths);
    }

    /// How many tenths the slips of `group` leave the answer off.
    long tenths(int group) {
        return grouped().tenths(group);
    }

    /// The place in the order of the first slip of `group`.
    int start(int group) {
        return grouped().start(group);
    }

    /// The place after the last slip of the work in `group`; slips of the pencil follow.
    int endOfWork(int group) {
        return grouped().endOfWork(group);
    }

    /// The place after the last slip of `group`.
    int end(int group) {
        return grouped().end(group);
    }

    /// The slip at a place in the order, as an index of [#events()].
    int at(int place) {
        return grouped().at(place);
    }

    /// The [Slot] of the slip at a place in the order.
    int slot(int place) {
        return grouped().slot(place);
    }

    /// Whether the slip at a place in the order is one of the hand.
    boolean isOfHand(int place) {
        return Slot.moveIndex(slot(place)) >= 0;
    }

    /// How often the slip at a place in the order is made.
    double chance(int place, Rates rates) {
        GroupedSlips slips = grouped();
        return rates.ofSlot(slips.slot(place)) * slips.events().weight(slips.at(place));
    }

    /// By how many tenths of the last place `written` is off; empty if it has more places.
    OptionalLong tenths(BigDecimal written) {
        BigDecimal off = written.subtract(answer).stripTrailingZeros();
        if (off.scale() > places || off.precision() - off.scale() + places > 18) {
            return OptionalLong.empty();
        }
        return OptionalLong.of(off.setScale(places).unscaledValue().longValueExact());
    }
}
