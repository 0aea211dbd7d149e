package tamabako.problems.making.column;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tamabako.problems.making.column.Continuations.Point;

/// Follows every way a column can go on until one comes to an end, and remembers where none does.
final class DeadEnds {

    /// What is known after so much work.
    enum Finding {
        A_COLUMN,
        NO_COLUMN,
        GAVE_UP
    }

    private final Continuations continuations;
    private final Set<Point> dead = new HashSet<>();
    private long work;

    private DeadEnds(Asked asked, long mostWork) {
        this.continuations = new Continuations(asked);
        this.work = mostWork;
    }

    /// Whether there is a column with these signs, allowed and required techniques; other
    /// conditions are left out of account.
    static Finding look(Asked asked, long mostWork) {
        if (!Continuations.fit(asked)) {
            return Finding.GAVE_UP;
        }
        DeadEnds ends = new DeadEnds(asked, mostWork);
        if (ends.goesOn(ends.continuations.start())) {
            return Finding.A_COLUMN;
        }
        return ends.work < 0 ? Finding.GAVE_UP : Finding.NO_COLUMN;
    }

    private boolean goesOn(Point point) {
        if (continuations.isWhole(point)) {
            return continuations.isGranted(point);
        }
        if (dead.contains(point)) {
            return false;
        }
        List<Point> next = continuations.next(point);
        work -= next.size();
        for (Point then : next) {
            if (work < 0) {
                return false;
            }
            if (goesOn(then)) {
                return true;
            }
        }
        dead.add(point);
        return false;
    }
}
