package tamabako.records;

import java.util.List;
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
                no_flashing, extra_time, pace, demo)
            values (:id, :group, :name, :language, :kana, :born, :grade, :rosterId,
                :noFlashing, :extraTime, :pace, :demo)
            on conflict (id) do update set
                group_id = excluded.group_id, name = excluded.name, language = excluded.language,
                kana = excluded.kana, born = excluded.born, grade = excluded.grade,
                roster_id = excluded.roster_id, no_flashing = excluded.no_flashing,
                extra_time = excluded.extra_time, pace = excluded.pace
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
                        .execute());
    }

    /// Puts several pupils in the book, whole or not at all.
    public void keep(List<Pupil> pupils) {
        door.whole(() -> pupils.forEach(this::keep));
    }
}
