package tamabako.records.export;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tamabako.problems.Sheet;
import tamabako.records.Attended;
import tamabako.records.ClassBook;
import tamabako.records.Draft;
import tamabako.records.Group;
import tamabako.records.Handout;
import tamabako.records.KeptOutcome;
import tamabako.records.Note;
import tamabako.records.Pupil;
import tamabako.records.Result;
import tamabako.records.Work;

/// All that the class book knows of one pupil.
///
/// @param pupil the pupil with preferences
/// @param group the name of the pupil's group
/// @param pin the figures that the pupil types beside the name in a room, if some were drawn
/// @param attendance the oldest day first
/// @param notes the newest first
/// @param results the oldest first
/// @param exams what came of exams that were sat elsewhere, the oldest first
/// @param handouts the oldest first
/// @param work the oldest first
/// @param drafts answers that are not handed in yet
/// @param sheets every sheet that is spoken of above, by its identity
public record PupilExport(
        Pupil pupil,
        String group,
        Optional<String> pin,
        List<Attended> attendance,
        List<Note> notes,
        List<Result> results,
        List<KeptOutcome> exams,
        List<Handout> handouts,
        List<Work> work,
        List<Draft> drafts,
        Map<String, Sheet> sheets) {

    public PupilExport {
        attendance = List.copyOf(attendance);
        notes = List.copyOf(notes);
        results = List.copyOf(results);
        exams = List.copyOf(exams);
        handouts = List.copyOf(handouts);
        work = List.copyOf(work);
        drafts = List.copyOf(drafts);
        sheets = Map.copyOf(sheets);
    }

    /// Gathers it from the book.
    public static PupilExport of(ClassBook book, Pupil pupil) {
        List<Handout> handouts = book.handouts().of(pupil);
        List<Work> work = book.work().of(pupil.id());
        List<Draft> drafts = book.drafts().of(pupil.id());
        Map<String, Sheet> sheets = new HashMap<>();
        Stream.of(
                        handouts.stream().map(Handout::sheetId),
                        work.stream().map(Work::sheetId),
                        drafts.stream().map(Draft::sheetId))
                .flatMap(ids -> ids)
                .distinct()
                .forEach(id ->
                        book.sheets().find(id).ifPresent(kept -> sheets.put(id, kept.sheet())));
        return new PupilExport(
                pupil,
                book.groups().find(pupil.groupId()).map(Group::name).orElse(""),
                book.pins().find(pupil.id()),
                book.attendance().of(pupil.id()),
                book.notes().of(pupil.id()),
                book.results().of(pupil.id()),
                book.exams().of(pupil.id()),
                handouts,
                work,
                drafts,
                sheets);
    }

    /// The sheet of that identity, if it is still in the book.
    public Optional<Sheet> sheet(String id) {
        return Optional.ofNullable(sheets.get(id));
    }
}
