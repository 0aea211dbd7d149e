package tamabako.desk.book;

import tamabako.desk.sheet.Form;
import tamabako.records.Pupil;

/// What the page of one pupil shows: who it is, and the parts of the page, each with a template of
/// its own.
///
/// @param group the name of the pupil's group
/// @param form the forms of the parts
public record PupilView(
        Pupil pupil,
        String group,
        Form form,
        WorkPart work,
        AttendancePart attendance,
        NotesPart notes,
        ResultsPart results) {}
