package tamabako.records.demo;

import static tamabako.records.demo.DemoSlip.CARRY_LEFT_OUT;
import static tamabako.records.demo.DemoSlip.FIVE_BEAD;
import static tamabako.records.demo.DemoSlip.ROW_SKIPPED;
import static tamabako.records.demo.DemoSlip.SIGN_MISSED;
import static tamabako.records.demo.DemoSlip.WRITTEN_SWAPPED;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import tamabako.frame.Technique;
import tamabako.problems.Sheet;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.Made;
import tamabako.problems.making.Maker;
import tamabako.problems.making.ProductWish;
import tamabako.problems.making.QuotientWish;
import tamabako.problems.making.Wish;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Identity;
import tamabako.records.KeptSheet;
import tamabako.records.Pupil;
import tamabako.records.Work;

/// Fills a class book with the demo class. The same seed simulates the same history.
public final class DemoClass {

    private static final long SEED = 20_260_414;

    private static final List<DemoPupil> JUNIORS =
            List.of(
                    new DemoPupil("Aoi", Locale.JAPANESE, 12, CARRY_LEFT_OUT),
                    new DemoPupil("Ben", Locale.ENGLISH, 25, FIVE_BEAD),
                    new DemoPupil("Chika", Locale.JAPANESE, 6, WRITTEN_SWAPPED),
                    new DemoPupil("Dario", Locale.ENGLISH, 18, ROW_SKIPPED),
                    new DemoPupil("Emi", Locale.JAPANESE, 9, SIGN_MISSED),
                    new DemoPupil("Farah", Locale.ENGLISH, 15, CARRY_LEFT_OUT),
                    new DemoPupil("Goro", Locale.JAPANESE, 30, CARRY_LEFT_OUT),
                    new DemoPupil("Hana", Locale.JAPANESE, 4, FIVE_BEAD));

    private static final List<DemoPupil> ADULTS =
            List.of(
                    new DemoPupil("Ivo", Locale.ENGLISH, 14, SIGN_MISSED),
                    new DemoPupil("June", Locale.ENGLISH, 8, ROW_SKIPPED),
                    new DemoPupil("Kenta", Locale.JAPANESE, 10, FIVE_BEAD),
                    new DemoPupil("Lina", Locale.ENGLISH, 5, WRITTEN_SWAPPED),
                    new DemoPupil("Mirek", Locale.ENGLISH, 22, CARRY_LEFT_OUT),
                    new DemoPupil("Noor", Locale.ENGLISH, 16, ROW_SKIPPED));

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
        demo.group(
                "Tuesday juniors",
                JUNIORS,
                List.of(
                        new Task(
                                "First sums, five beads",
                                ColumnWish.of(4, 1)
                                        .withMinusRows(1)
                                        .allowing(Technique.DIRECT, Technique.FIVE_COMPLEMENT),
                                10,
                                15),
                        new Task("Two digits, carrying", ColumnWish.of(5, 2), 10, 8),
                        new Task(
                                "Two digits, taking",
                                ColumnWish.of(5, 2).withMinusRows(2),
                                10,
                                1)));
        demo.group(
                "Thursday adults",
                ADULTS,
                List.of(
                        new Task("Three digits", ColumnWish.of(10, 3).withMinusRows(3), 10, 13),
                        new Task("Times, two by two", new ProductWish(2, 2), 20, 6),
                        new Task("Divide by one digit", new QuotientWish(1, 3), 20, 6)));
    }

    /// A sheet that a group has worked.
    private record Task(String title, Wish wish, int problems, int daysAgo) {}

    private void group(String name, List<DemoPupil> members, List<Task> tasks) {
        Group group = new Group(Identity.fresh(), name, true);
        List<Pupil> pupils = new ArrayList<>();
        for (DemoPupil member : members) {
            Pupil pupil =
                    new Pupil(Identity.fresh(), group.id(), member.name(), member.language(), true);
            pupils.add(DemoYear.about(pupil));
        }
        book.groups().keep(group);
        book.pupils().keep(pupils);
        List<DemoYear.HandedOut> handedOut = new ArrayList<>();
        for (Task task : tasks) {
            handedOut.add(handIn(task, members, pupils));
        }
        new DemoYear(book, now).write(group, pupils, handedOut);
    }

    private DemoYear.HandedOut handIn(Task task, List<DemoPupil> members, List<Pupil> pupils) {
        Instant day = now.minus(Duration.ofDays(task.daysAgo()));
        Sheet sheet = sheet(task);
        book.sheets().keep(new KeptSheet(sheet, day, true));
        for (int i = 0; i < members.size(); i++) {
            List<Work.MarkedAnswer> answers = members.get(i).work(sheet.problems(), chance);
            Instant handed = day.plus(Duration.ofMinutes(15 + i));
            book.work().keep(Work.of(sheet.id(), Optional.of(pupils.get(i).id()), handed, answers));
        }
        return new DemoYear.HandedOut(sheet.id(), day);
    }

    private static Wish customary(Wish wish) {
        return wish instanceof ColumnWish columns ? columns.withCustomsOfPractice() : wish;
    }

    private Sheet sheet(Task task) {
        Made made = Maker.make(customary(task.wish()), task.problems(), chance.nextLong());
        if (made instanceof Made.Found found) {
            return new Sheet(Identity.readable(), task.title(), found.problems());
        }
        throw new IllegalStateException("The demo's sheets can all be made, not so: " + made);
    }
}
