package tamabako.desk.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tamabako.desk.web.Days;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Handout;
import tamabako.records.Pupil;

/// To whom a sheet was handed out, and to whom it can be.
///
/// @param sheet the number of the sheet
/// @param groups all groups
/// @param handed what was noted, the newest first
public record Handing(String sheet, List<Group> groups, List<Entry> handed) {

    public Handing {
        groups = List.copyOf(groups);
        handed = List.copyOf(handed);
    }

    /// One handout: the name of the group or the pupil, and the day in words.
    public record Entry(String id, String to, String day) {}

    static Handing of(ClassBook book, String sheet, Days days, Locale language) {
        return new Handing(
                sheet,
                book.groups().all(),
                book.handouts().ofSheet(sheet).reversed().stream()
                        .map(handout ->
                                new Entry(
                                        handout.id(),
                                        name(book, handout),
                                        days.say(handout.at(), language)))
                        .toList());
    }

    private static String name(ClassBook book, Handout handout) {
        Optional<String> pupil = handout.pupilId().flatMap(book.pupils()::find).map(Pupil::name);
        return pupil.or(() -> book.groups().find(handout.groupId()).map(Group::name)).orElse("");
    }
}
