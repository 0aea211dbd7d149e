package tamabako.desk.book;

import java.util.List;
import tamabako.records.ClassBook;
import tamabako.records.Pupil;

/// What the teacher wrote about one pupil.
///
/// @param notes the newest first
public record NotesPart(List<Entry> notes) {

    public NotesPart {
        notes = List.copyOf(notes);
    }

    /// One note with its day in words.
    public record Entry(String id, String day, String words) {}

    static NotesPart of(ClassBook book, Pupil pupil, Telling telling) {
        return new NotesPart(
                book.notes().of(pupil.id()).stream()
                        .map(note ->
                                new Entry(note.id(), telling.day(note.writtenAt()), note.words()))
                        .toList());
    }
}
