package tamabako.desk.book;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tamabako.records.Attended;
import tamabako.records.ClassBook;
import tamabako.records.Pupil;

/// When one pupil came.
///
/// @param latest the last days, the newest first
/// @param present days in time, of all days
/// @param late days late
/// @param absent days away
/// @param today the day of today as a field for days takes it
public record AttendancePart(List<Day> latest, long present, long late, long absent, String today) {

    private static final int LATEST = 12;

    public AttendancePart {
        latest = List.copyOf(latest);
    }

    /// One day.
    ///
    /// @param iso the day as ISO 8601
    /// @param said the day in words
    /// @param how `present`, `late` or `absent`
    public record Day(String iso, String said, String how) {}

    static AttendancePart of(ClassBook book, Pupil pupil, Telling telling) {
        List<Attended> all = new ArrayList<>(book.attendance().of(pupil.id()));
        Collections.reverse(all);
        return new AttendancePart(
                all.stream()
                        .limit(LATEST)
                        .map(one ->
                                new Day(
                                        one.day().toString(),
                                        telling.day(one.day()),
                                        Hows.word(one.how())))
                        .toList(),
                count(all, Attended.How.PRESENT),
                count(all, Attended.How.LATE),
                count(all, Attended.How.ABSENT),
                telling.today().toString());
    }

    private static long count(List<Attended> all, Attended.How how) {
        return all.stream().filter(one -> one.how() == how).count();
    }
}
