package tamabako.records.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import tamabako.records.About;
import tamabako.records.Attended;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Handout;
import tamabako.records.Identity;
import tamabako.records.Note;
import tamabako.records.Preferences;
import tamabako.records.Pupil;
import tamabako.records.Result;

/// What the demo's teacher wrote down beside the work: who came, what was handed out, a few notes,
/// results and preferences. The same seed tells the same year.
///
/// @param now when the demo is looked at
/// @param daysAgo when the group's last lesson was
record DemoYear(ClassBook book, Instant now, int daysAgo) {

    private static final int DAYS_BETWEEN = 7;
    private static final int LATE_PER_HUNDRED = 6;
    private static final int AWAY_PER_HUNDRED = 9;

    private static final List<Remark> REMARKS =
            List.of(
                    new Remark("Goro", 8, "Leaves out the carry in a hurry. Let him say it aloud."),
                    new Remark("Ben", 8, "Fives and ones get mixed up; back to the upper bead."),
                    new Remark("Chika", 1, "Ready for three digits."),
                    new Remark("Mirek", 6, "Practises at home with the long sheets."));

    private static final List<Held> HELD =
            List.of(new Held("Lina", Result.Kind.CONTEST, "Harbour contest", 60, 180, "third"));

    /// What was noted on a pupil so many days ago.
    private record Remark(String pupil, int daysAgo, String words) {}

    /// A contest so many days ago, of 300 points.
    private record Held(
            String pupil, Result.Kind kind, String name, int daysAgo, int points, String outcome) {}

    /// A pupil of the demo, with what was written down about the pupil.
    static Pupil about(Pupil pupil) {
        Preferences preferences =
                switch (pupil.name()) {
                    case "Emi" -> new Preferences(true, 0, 100);
                    case "Goro" -> new Preferences(false, 25, 80);
                    case "June" -> new Preferences(false, 50, 100);
                    default -> Preferences.USUAL;
                };
        String grade =
                switch (pupil.name()) {
                    case "Hana", "Chika" -> "7 kyu";
                    case "Goro", "Ben" -> "8 kyu";
                    case "Lina", "June" -> "5 kyu";
                    default -> "";
                };
        About about = new About("", Optional.empty(), grade, "");
        return new Pupil(
                pupil.id(),
                pupil.groupId(),
                pupil.name(),
                pupil.language(),
                about,
                preferences,
                pupil.demo());
    }

    /// When a lesson was.
    ///
    /// @param lesson how many lessons ago: 1 is the last one
    Instant at(int lesson) {
        return now.minus(Duration.ofDays(daysAgo + (lesson - 1L) * DAYS_BETWEEN));
    }

    /// Who came to which lesson, pupil by pupil, the last lesson first.
    List<List<Attended.How>> attend(List<Pupil> pupils) {
        SplittableRandom chance = new SplittableRandom(pupils.size());
        List<List<Attended.How>> came = new ArrayList<>();
        for (Pupil pupil : pupils) {
            List<Attended.How> lessons = new ArrayList<>();
            for (int lesson = 1; lesson <= DemoTerm.LESSONS; lesson++) {
                Attended.How how = how(chance.nextInt(100));
                lessons.add(how);
                LocalDate day = LocalDate.ofInstant(at(lesson), ZoneOffset.UTC);
                book.attendance().keep(new Attended(pupil.id(), day, how));
            }
            came.add(lessons);
        }
        return came;
    }

    /// Writes down what was handed out to the group, and what was noted on its pupils.
    void write(Group group, List<Pupil> pupils, List<HandedOut> handedOut) {
        handedOut.forEach(one -> book.handouts().keep(Handout.of(one.sheetId(), group, one.at())));
        pupils.forEach(this::write);
    }

    /// A sheet that was handed out to the group.
    record HandedOut(String sheetId, Instant at) {}

    private void write(Pupil pupil) {
        REMARKS.stream()
                .filter(remark -> remark.pupil().equals(pupil.name()))
                .forEach(remark ->
                        book.notes()
                                .keep(
                                        Note.of(
                                                pupil.id(),
                                                now.minus(Duration.ofDays(remark.daysAgo())),
                                                remark.words())));
        HELD.stream()
                .filter(held -> held.pupil().equals(pupil.name()))
                .forEach(held ->
                        book.results()
                                .keep(
                                        new Result(
                                                Identity.fresh(),
                                                pupil.id(),
                                                held.kind(),
                                                held.name(),
                                                day(held.daysAgo()),
                                                Optional.of(new Result.Score(held.points(), 300)),
                                                held.outcome())));
    }

    private LocalDate day(int daysAgo) {
        return LocalDate.ofInstant(now, ZoneOffset.UTC).minusDays(daysAgo);
    }

    private static Attended.How how(int ofHundred) {
        if (ofHundred < AWAY_PER_HUNDRED) {
            return Attended.How.ABSENT;
        }
        return ofHundred < AWAY_PER_HUNDRED + LATE_PER_HUNDRED
                ? Attended.How.LATE
                : Attended.How.PRESENT;
    }
}
