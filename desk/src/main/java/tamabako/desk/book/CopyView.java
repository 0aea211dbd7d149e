package tamabako.desk.book;

import java.util.List;
import tamabako.records.Draft;
import tamabako.records.Pupil;

/// All that is known of one pupil, to be read.
///
/// @param today the day on which it was asked for, in words
/// @param attendance every day, the oldest first
/// @param drafts answers that are not handed in yet
public record CopyView(
        Pupil pupil,
        String group,
        String today,
        List<AttendancePart.Day> attendance,
        NotesPart notes,
        ResultsPart results,
        WorkPart work,
        List<Draft> drafts) {

    public CopyView {
        attendance = List.copyOf(attendance);
        drafts = List.copyOf(drafts);
    }
}
