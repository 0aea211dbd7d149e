package tamabako.insight.slip;

import java.util.LinkedHashMap;
import java.util.Map;
import tamabako.problems.Problem;

/// Keeps the tables of the problems that were asked for last, for a class works the same sheet.
/// Threads may share it.
public final class EventTables {

    private static final int MOST = 512;

    private final Map<Problem, EventTable> kept =
            new LinkedHashMap<>(16, 0.75f, true) {
                private static final long serialVersionUID = 1L;

                @Override
                protected boolean removeEldestEntry(Map.Entry<Problem, EventTable> eldest) {
                    return size() > MOST;
                }
            };

    /// The table of `problem`; the problem's name does not matter.
    public EventTable of(Problem problem) {
        Problem nameless = problem.withId("");
        synchronized (kept) {
            EventTable table = kept.get(nameless);
            if (table != null) {
                return table;
            }
        }
        EventTable made = EventTable.of(nameless);
        synchronized (kept) {
            kept.put(nameless, made);
        }
        return made;
    }
}
