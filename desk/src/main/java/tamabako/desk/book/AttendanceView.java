package tamabako.desk.book;

import java.util.List;
import tamabako.records.Group;
import tamabako.records.Pupil;

/// Who of a group came on one day.
///
/// @param iso the day as ISO 8601
/// @param said the day in words
/// @param before the day before, as ISO 8601
/// @param after the day after; blank where that is still to come
/// @param lines the pupils by name
public record AttendanceView(
        Group group, String iso, String said, String before, String after, List<Line> lines) {

    public AttendanceView {
        lines = List.copyOf(lines);
    }

    /// A pupil and how the pupil attended; blank where it was not noted.
    public record Line(Pupil pupil, String how) {}

    /// How many attended so.
    public long count(String how) {
        return lines.stream().filter(line -> line.how().equals(how)).count();
    }
}
