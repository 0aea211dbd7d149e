package tamabako.insight.slip;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.problems.Column;

/// Two slips in a column of which the second, a slip of the hand, meets the frame as the first has
/// left it.
///
/// After each first slip the rest of the column is worked again from there; the slips of the hand
/// that this rest allows are the second ones. What they do to the answer adds up with the first, so
/// only those steps are looked at that are on a rod where the missing difference can be made. A
/// second slip of the eye needs no such care: what is read does not depend on the frame.
final class ExactPairs {

    /// A slip of the hand changes its rod by twice nine at most.
    private static final int MOST_ON_A_ROD = 18;

    /// Pairs of which the second is a slip of the hand.
    ///
    /// @param first the first slip, as an index of the events of the whole column
    /// @param second the slips that may follow it, all of them as far off
    record Pair(int first, Events second) {}

    private final EventTable table;
    private final long[] rows;
    private final int places;

    private ExactPairs(EventTable table, long[] rows) {
        this.table = table;
        this.rows = rows;
        this.places = table.places() - 1;
    }

    /// The pairs that leave the answer of `table` off by `tenths`; none unless [#canFollow].
    static List<Pair> of(EventTable table, long tenths) {
        return rows(table)
                .map(rows -> new ExactPairs(table, rows).leadingTo(tenths))
                .orElse(List.of());
    }

    /// Whether pairs can be worked out: for a column on the frame with no total below zero.
    static boolean canFollow(EventTable table) {
        return rows(table).isPresent();
    }

    private static Optional<long[]> rows(EventTable table) {
        if (!(table.problem() instanceof Column column) || table.inMind() || table.slips() == 0) {
            return Optional.empty();
        }
        return UnitRows.of(column).filter(UnitRows::staysAboveZero).map(UnitRows::rows);
    }

    private List<Pair> leadingTo(long tenths) {
        List<Pair> pairs = new ArrayList<>();
        for (int group = 0; group < table.answers(); group++) {
            long missing = tenths - table.tenths(group);
            if (missing != 0 && missing % 10 == 0 && isOnARod(missing / 10)) {
                follow(group, missing / 10, pairs);
            }
        }
        return pairs;
    }

    /// Whether one slip of the hand can be so far off.
    private static boolean isOnARod(long units) {
        long left = units;
        while (left % 10 == 0) {
            left /= 10;
        }
        return Math.abs(left) <= MOST_ON_A_ROD;
    }

    private void follow(int group, long missing, List<Pair> pairs) {
        Map<Integer, Events> seconds = new HashMap<>();
        for (int place = table.start(group); place < table.endOfWork(group); place++) {
            int first = table.at(place);
            int moment = table.events().moment(first);
            Events second =
                    seconds.computeIfAbsent(
                            moment, after -> second(after, table.tenths(group) / 10, missing));
            if (second.size() > 0) {
                pairs.add(new Pair(first, second));
            }
        }
    }

    /// The slips of the hand that are `missing` off, in the rest that is worked after `moment` on a
    /// frame where `off` too much stands.
    private Events second(int moment, long off, long missing) {
        StepLog rest = rest(moment, off);
        Events found = Events.toward(10 * missing);
        for (int i = 0; i < rest.size(); i++) {
            long unit = Tens.power(rest.rod(i));
            if (missing % unit == 0 && Math.abs(missing / unit) <= MOST_ON_A_ROD) {
                new BeadSlips(rest, i, i + 1, -places, Effect.ADDED, found).add();
            }
        }
        return found;
    }

    /// The steps that follow; none where the frame is short of what is to be taken.
    private StepLog rest(int moment, long off) {
        int row = Code.number(Moment.where(moment)) - 1;
        long begun = rows[row] % Tens.power(Moment.place(moment));
        long shown = off - begun;
        for (int i = 0; i <= row; i++) {
            shown += rows[i];
        }
        if (shown < 0) {
            return new StepLog();
        }
        FastHand hand = FastHand.holding(shown);
        long next = begun;
        for (int i = row; i < rows.length && shown + next >= 0; ) {
            hand.enter(next, StepLog.Role.ENTRY, Code.row(i + 1));
            shown += next;
            i++;
            next = i < rows.length ? rows[i] : 0;
        }
        return hand.log();
    }
}
