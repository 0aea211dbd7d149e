package tamabako.records;

import java.time.Instant;
import java.util.List;

/// The teacher's notes on pupils.
public final class Notes {

    private final Door door;

    Notes(Door door) {
        this.door = door;
    }

    /// Puts a note in the book.
    public void keep(Note note) {
        door.tell(book ->
                book.createUpdate(
                                """
                                insert into note (id, pupil_id, written_at, words)
                                values (:id, :pupil, :writtenAt, :words)
                                """)
                        .bind("id", note.id())
                        .bind("pupil", note.pupilId())
                        .bind("writtenAt", Moments.write(note.writtenAt()))
                        .bind("words", note.words())
                        .execute());
    }

    /// The notes on one pupil, the newest first.
    public List<Note> of(String pupilId) {
        return door.ask(book ->
                book.createQuery(
                                """
                                select id, pupil_id, written_at, words from note
                                where pupil_id = :pupil order by written_at desc, id
                                """)
                        .bind("pupil", pupilId)
                        .map((row, _) ->
                                new Note(
                                        row.getString("id"),
                                        row.getString("pupil_id"),
                                        Instant.parse(row.getString("written_at")),
                                        row.getString("words")))
                        .list());
    }

    /// Takes a note out of the book.
    public void remove(String id) {
        door.tell(book ->
                book.createUpdate("delete from note where id = :id").bind("id", id).execute());
    }
}
