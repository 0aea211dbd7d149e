package tamabako.records;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// The pupils in the class book.
public final class Pupils {

    private static final String SELECT =
            """
            select id, group_id, name, language, kana, born, grade, roster_id, no_flashing,
                extra_time, pace, demo
            from pupil\
            """;

    private static final String KEEP =
            """
            insert into pupil (id, group_id, name, language, kana, born, grade, roster_id,
                no_flashing, extra_time, pace, demo, added_at)
            values (:id, :group, :name, :language, :kana, :born, :grade, :rosterId,
                :noFlashing, :extraTime, :pace, :demo, :addedAt)
            on conflict (id) do update set
                group_id = excluded.group_id, name = excluded.name, language = excluded.language,
                kana = excluded.kana, born = excluded.born, grade = excluded.grade,
                roster_id = excluded.roster_id, no_flashing = excluded.no_flashing,
                extra_time = excluded.extra_time, pace = excluded.pace
            """;

    private static final String LAST_SEEN =
            """
            select pupil.id as id, coalesce(max(seen.at), pupil.added_at) as seen
            from pupil left join (
                select pupil_id, handed_at as at from work
                union all select pupil_id, day as at from attendance
                union all select pupil_id, written_at as at from note
                union all select pupil_id, day as at from result
                union all select pupil_id, day as at from exam_outcome
            ) seen on seen.pupil_id = pupil.id
            group by pupil.id, pupil.added_at
            """;

    private final Door door;

    Pupils(Door door) {
        this.door = door;
    }

    /// All pupils by name.
    public List<Pupil> all() {
        return door.ask(book ->
                book.createQuery(SELECT).map((row, _) -> Rows.pupil(row)).list().stream()
                        .sorted(Pupil.BY_NAME)
                        .toList());
    }

    /// The pupils of one group by name.
    public List<Pupil> in(String groupId) {
        return all().stream().filter(pupil -> pupil.groupId().equals(groupId)).toList();
    }

    /// The pupil of this identity, if there is one.
    public Optional<Pupil> find(String id) {
        return door.ask(book ->
                book.createQuery(SELECT + " where id = :id")
                        .bind("id", id)
                        .map((row, _) -> Rows.pupil(row))
                        .findOne());
    }

    /// Puts a pupil in the book, or what is new about one who is there.
    public void keep(Pupil pupil) {
        door.tell(book ->
                book.createUpdate(KEEP)
                        .bind("id", pupil.id())
                        .bind("group", pupil.groupId())
                        .bind("name", pupil.name())
                        .bind("language", pupil.language().toLanguageTag())
                        .bind("kana", pupil.about().kana())
                        .bind("born", pupil.about().born().map(year -> year.getValue()))
                        .bind("grade", pupil.about().grade())
                        .bind("rosterId", pupil.about().rosterId())
                        .bind("noFlashing", Rows.flag(pupil.preferences().noFlashing()))
                        .bind("extraTime", pupil.preferences().extraTime())
                        .bind("pace", pupil.preferences().pace())
                        .bind("demo", Rows.flag(pupil.demo()))
                        .bind("addedAt", Moments.write(Instant.now()))
                        .execute());
    }

    /// Takes a pupil out of the book with all that hangs on the pupil: work with its answers,
    /// drafts, handouts, attendance, notes, results and outcomes of exams. In the embedded store
    /// nothing of it is left in the files afterwards; a server's database lets go of it when it
    /// cleans up next.
    public void erase(String id) {
        door.tell(book ->
                book.createUpdate("delete from pupil where id = :id").bind("id", id).execute());
        door.cleanUp();
    }

    /// When something was last written down for each pupil: work, attendance, a note, a result or
    /// an exam, and if there is nothing of the kind, when the pupil was put in the book. As ISO
    /// 8601, a day or a moment, by the pupil's identity; empty where not even that is known.
    public Map<String, String> lastSeen() {
        return door.ask(book ->
                book.createQuery(LAST_SEEN)
                        .reduceRows(
                                new HashMap<String, String>(),
                                (seen, row) -> {
                                    seen.put(
                                            row.getColumn("id", String.class),
                                            row.getColumn("seen", String.class));
                                    return seen;
                                }));
    }

    /// Puts several pupils in the book, whole or not at all.
    public void keep(List<Pupil> pupils) {
        door.whole(() -> pupils.forEach(this::keep));
    }
}
