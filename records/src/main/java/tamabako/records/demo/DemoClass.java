package tamabako.records.demo;

import static tamabako.insight.slip.SlipKind.CARRY_LEFT_OUT;
import static tamabako.insight.slip.SlipKind.FIVE_BEAD;
import static tamabako.insight.slip.SlipKind.FIVE_COMPLEMENT_WRONG;
import static tamabako.insight.slip.SlipKind.ROW_SKIPPED;
import static tamabako.insight.slip.SlipKind.SIGN_MISSED;
import static tamabako.insight.slip.SlipKind.TABLE_SLIP;
import static tamabako.insight.slip.SlipKind.WRITTEN_SWAPPED;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import tamabako.insight.simulation.Habit;
import tamabako.problems.Sheet;
import tamabako.problems.grade.ExamOutcome;
import tamabako.records.Attended;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Identity;
import tamabako.records.KeptOutcome;
import tamabako.records.KeptSheet;
import tamabako.records.Pupil;
import tamabako.records.Work;

/// Fills a class book with the demo class. The same seed simulates the same history.
public final class DemoClass {

    private static final long SEED = 20_260_414;

    /// Six of ten times, Goro takes 4 instead of 3 where he adds 7 by the complement.
    private static final Habit FOUR_FOR_THREE =
            new Habit(Habit.Part.TEN_COMPLEMENT, true, 7, 4, 0.6);

    private static final List<DemoPupil> JUNIORS =
            List.of(
                    new DemoPupil("Aoi", Locale.JAPANESE, 0.8, CARRY_LEFT_OUT, 1.5),
                    new DemoPupil("Ben", Locale.ENGLISH, 1.6, FIVE_BEAD, 2.1),
                    new DemoPupil("Chika", Locale.JAPANESE, 0.5, WRITTEN_SWAPPED, 1.3),
                    new DemoPupil("Dario", Locale.ENGLISH, 1.2, ROW_SKIPPED, 1.6),
                    new DemoPupil("Emi", Locale.JAPANESE, 0.7, SIGN_MISSED, 1.4),
                    new DemoPupil("Farah", Locale.ENGLISH, 1, TABLE_SLIP, 1.9),
                    new DemoPupil(
                            "Goro", Locale.JAPANESE, 1.5, CARRY_LEFT_OUT, 2.2, FOUR_FOR_THREE),
                    new DemoPupil("Hana", Locale.JAPANESE, 0.3, FIVE_BEAD, 1.1));

    private static final List<DemoPupil> ADULTS =
            List.of(
                    new DemoPupil("Ivo", Locale.ENGLISH, 0.8, SIGN_MISSED, 1.4),
                    new DemoPupil("June", Locale.ENGLISH, 0.5, ROW_SKIPPED, 1.7),
                    new DemoPupil("Kenta", Locale.JAPANESE, 0.6, FIVE_COMPLEMENT_WRONG, 1),
                    new DemoPupil("Lina", Locale.ENGLISH, 0.3, WRITTEN_SWAPPED, 0.9),
                    new DemoPupil("Mirek", Locale.ENGLISH, 1.2, CARRY_LEFT_OUT, 1.3),
                    new DemoPupil("Noor", Locale.ENGLISH, 0.9, ROW_SKIPPED, 1.2));

    /// After three lessons for grade 9, and after three for grade 8.
    private static final List<DemoExam> OF_JUNIORS =
            List.of(new DemoExam("9", 25), new DemoExam("8", 4));

    /// After four lessons for grade 6, and after three for grade 5.
    private static final List<DemoExam> OF_ADULTS =
            List.of(new DemoExam("6", 30), new DemoExam("5", 10));

    private final ClassBook book;
    private final Instant now;
    private final SplittableRandom chance = new SplittableRandom(SEED);

    private DemoClass(ClassBook book, Instant now) {
        this.book = book;
        this.now = now;
    }

    /// Puts both groups with their sheets and work in `book`, dated in the weeks before `now`.
    public static void fill(ClassBook book, Instant now) {
        DemoClass demo = new DemoClass(book, now);
        DemoTerm term = new DemoTerm(demo.chance);
        book.whole(() -> {
            demo.sit(
                    demo.group("Tuesday juniors", JUNIORS, term.juniors(), 1), JUNIORS, OF_JUNIORS);
            demo.sit(demo.group("Thursday adults", ADULTS, term.adults(), 6), ADULTS, OF_ADULTS);
        });
    }

    /// @param daysAgo when the last lesson was
    /// @return the pupils in the order of their members
    private List<Pupil> group(
            String name, List<DemoPupil> members, List<DemoTerm.Task> tasks, int daysAgo) {
        Group group = new Group(Identity.fresh(), name, true);
        List<Pupil> pupils = new ArrayList<>();
        for (DemoPupil member : members) {
            Pupil pupil =
                    new Pupil(Identity.fresh(), group.id(), member.name(), member.language(), true);
            pupils.add(DemoYear.about(pupil));
        }
        book.groups().keep(group);
        book.pupils().keep(pupils);
        DemoYear year = new DemoYear(book, now, daysAgo);
        List<List<Attended.How>> came = year.attend(pupils);
        List<DemoYear.HandedOut> handedOut = new ArrayList<>();
        for (DemoTerm.Task task : tasks) {
            handedOut.add(handIn(task, members, pupils, came, year.at(task.lesson())));
        }
        year.write(group, pupils, handedOut);
        return pupils;
    }

    /// Lets all pupils of a group sit some exams.
    private void sit(List<Pupil> pupils, List<DemoPupil> members, List<DemoExam> exams) {
        for (DemoExam exam : exams) {
            LocalDate day = LocalDate.ofInstant(now, ZoneOffset.UTC).minusDays(exam.daysAgo());
            for (int i = 0; i < pupils.size(); i++) {
                ExamOutcome outcome = exam.sit(members.get(i), day, exams(exam, i));
                book.exams().keep(KeptOutcome.of(pupils.get(i).id(), outcome));
            }
        }
    }

    /// Its own chance, so that an exam more leaves the rest of the history as it is.
    private static SplittableRandom exams(DemoExam exam, int pupil) {
        return new SplittableRandom(SEED + 1_000L * exam.daysAgo() + pupil);
    }

    private DemoYear.HandedOut handIn(
            DemoTerm.Task task,
            List<DemoPupil> members,
            List<Pupil> pupils,
            List<List<Attended.How>> came,
            Instant lesson) {
        Sheet sheet = new Sheet(Identity.readable(), task.title(), task.problems());
        book.sheets().keep(new KeptSheet(sheet, lesson, true));
        for (int i = 0; i < members.size(); i++) {
            if (came.get(i).get(task.lesson() - 1) == Attended.How.ABSENT) {
                continue;
            }
            List<Work.MarkedAnswer> answers =
                    members.get(i).work(sheet.problems(), task.lesson() - 1, chance);
            Instant handed = lesson.plus(Duration.ofMinutes(15 + i));
            book.work().keep(Work.of(sheet.id(), Optional.of(pupils.get(i).id()), handed, answers));
        }
        return new DemoYear.HandedOut(sheet.id(), lesson);
    }
}
