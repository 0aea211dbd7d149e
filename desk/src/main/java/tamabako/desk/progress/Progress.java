package tamabako.desk.progress;

import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import tamabako.desk.book.PupilTraces;
import tamabako.insight.pooling.Manner;
import tamabako.insight.slip.EventTables;
import tamabako.records.ClassBook;
import tamabako.records.KeptSheet;
import tamabako.records.Pupil;
import tamabako.records.Work;

/// Judges the work of pupils, each beside the others of the group.
///
/// What was gathered and judged is remembered until the work changes: a page about one pupil asks
/// for the whole group. An erased pupil is forgotten at once.
final class Progress implements PupilTraces {

    private final ClassBook book;
    private final ZoneId zone;
    private final EventTables tables = new EventTables();
    private final Map<String, Gathered> gathered = new ConcurrentHashMap<>();
    private final Map<String, Learned> learned = new ConcurrentHashMap<>();

    /// @param zone where the lessons are held
    Progress(ClassBook book, ZoneId zone) {
        this.book = book;
        this.zone = zone;
    }

    /// What a group's work says of pupils in general, and the judgements made by it.
    private record Learned(
            List<Gathered> from, Map<Manner, InGeneral> general, Map<String, Judged> judged) {

        /// Whether it rests on the very same work.
        boolean isOf(List<Gathered> group) {
            return from.size() == group.size()
                    && IntStream.range(0, group.size())
                            .allMatch(i -> isSame(from.get(i), group.get(i)));
        }

        @SuppressWarnings("ReferenceEquality") // Gathered anew is another object.
        private static boolean isSame(Gathered one, Gathered other) {
            return one == other;
        }
    }

    /// The judgements on all pupils of a group, by their names.
    List<Judged> ofGroup(String groupId) {
        List<Gathered> group = book.pupils().in(groupId).stream().map(this::gather).toList();
        Learned known = learn(groupId, group);
        return group.stream().map(one -> judge(one, known)).toList();
    }

    /// The judgements on one pupil.
    Judged of(Pupil pupil) {
        List<Gathered> group =
                book.pupils().in(pupil.groupId()).stream().map(this::gather).toList();
        return judge(gather(pupil), learn(pupil.groupId(), group));
    }

    private Judged judge(Gathered one, Learned known) {
        return known.judged()
                .computeIfAbsent(one.pupil().id(), _ -> Judged.of(one, known.general()));
    }

    private Learned learn(String groupId, List<Gathered> group) {
        Learned before = learned.get(groupId);
        if (before != null && before.isOf(group)) {
            return before;
        }
        Map<Manner, InGeneral> general = new EnumMap<>(Manner.class);
        for (Manner manner : Manner.values()) {
            general.put(manner, InGeneral.of(group, manner));
        }
        Learned now = new Learned(group, general, new ConcurrentHashMap<>());
        learned.put(groupId, now);
        return now;
    }

    /// The work of one pupil.
    Gathered gather(Pupil pupil) {
        List<Work> works = book.work().of(pupil.id());
        Optional<Gathered> before =
                Optional.ofNullable(gathered.get(pupil.id()))
                        .filter(one -> one.works().equals(works) && one.pupil().equals(pupil));
        return before.orElseGet(() -> {
            Gathered now =
                    Gathered.of(
                            pupil,
                            works,
                            id -> book.sheets().find(id).map(KeptSheet::sheet),
                            tables,
                            zone);
            gathered.put(pupil.id(), now);
            return now;
        });
    }

    /// The tables of the problems that were asked for last.
    EventTables tables() {
        return tables;
    }

    @Override
    public void erase(String pupilId) {
        gathered.remove(pupilId);
        learned.clear();
    }
}
