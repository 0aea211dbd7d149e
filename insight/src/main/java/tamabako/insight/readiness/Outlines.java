package tamabako.insight.readiness;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import tamabako.insight.slip.EventTables;
import tamabako.problems.grade.Grade;

/// Keeps the outlines of the grades that were asked for. Threads may share it.
public final class Outlines {

    private record Key(String ladder, Grade grade) {}

    private final EventTables tables;
    private final Map<Key, Optional<Outline>> kept = new ConcurrentHashMap<>();

    /// Outlines made with these tables.
    public Outlines(EventTables tables) {
        this.tables = tables;
    }

    /// The outline of a grade; empty if no paper of it can be made.
    ///
    /// @param ladder the name of the ladder that the grade is of
    public Optional<Outline> of(String ladder, Grade grade) {
        return kept.computeIfAbsent(
                new Key(ladder, grade), key -> Outline.of(key.ladder(), key.grade(), tables));
    }
}
