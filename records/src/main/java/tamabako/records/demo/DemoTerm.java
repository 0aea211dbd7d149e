package tamabako.records.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import tamabako.frame.Technique;
import tamabako.problems.Problem;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Section;
import tamabako.problems.grade.file.Ladders;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.Made;
import tamabako.problems.making.Maker;
import tamabako.problems.making.Wish;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperId;
import tamabako.problems.setting.PaperMade;
import tamabako.problems.setting.PaperMaker;
import tamabako.problems.setting.PaperSection;

/// What the demo's groups worked on in a term of [#LESSONS] weeks: each lesson the sections of a
/// grade, as its paper has them.
final class DemoTerm {

    /// How many lessons the term has had, one a week.
    static final int LESSONS = 8;

    /// The ladder whose grades the groups work towards.
    static final String LADDER = "abacus-by-sections";

    private static final PaperId UNPRINTED = PaperId.draw(() -> 0);

    private final SplittableRandom chance;

    DemoTerm(SplittableRandom chance) {
        this.chance = chance;
    }

    /// A sheet that was worked in a lesson.
    ///
    /// @param lesson how many weeks ago, from [#LESSONS] down to 1
    record Task(String title, List<Problem> problems, int lesson) {}

    /// What juniors did.
    List<Task> juniors() {
        List<Task> tasks = new ArrayList<>();
        tasks.add(
                wished(
                        "First sums, five beads",
                        ColumnWish.of(4, 1)
                                .withMinusRows(1)
                                .allowing(Technique.DIRECT, Technique.FIVE_COMPLEMENT),
                        LESSONS));
        tasks.addAll(graded("9", LESSONS - 1, 5));
        tasks.add(wished("Two digits, carrying", ColumnWish.of(5, 2), 5));
        tasks.addAll(graded("8", 4, 1));
        tasks.add(wished("Two digits, taking", ColumnWish.of(5, 2).withMinusRows(2), 1));
        return tasks;
    }

    /// What adults did.
    List<Task> adults() {
        List<Task> tasks = new ArrayList<>(graded("6", LESSONS, 5));
        tasks.addAll(graded("5", 4, 1));
        return tasks;
    }

    private List<Task> graded(String id, int first, int last) {
        Grade grade = grade(id);
        List<Task> tasks = new ArrayList<>();
        for (int lesson = first; lesson >= last; lesson--) {
            for (PaperSection section : paper(id, chance.nextLong()).sections()) {
                tasks.add(
                        new Task(
                                title(grade, section.section(), first - lesson + 1),
                                section.problems(),
                                lesson));
            }
        }
        return tasks;
    }

    static Grade grade(String id) {
        return Ladders.ladder(LADDER).flatMap(ladder -> ladder.grade(id)).orElseThrow();
    }

    /// The paper of a grade that this seed makes.
    static Paper paper(String id, long seed) {
        if (PaperMaker.of(LADDER, grade(id)).make(UNPRINTED, seed, List.of())
                instanceof PaperMade.Found(Paper paper, _)) {
            return paper;
        }
        throw new IllegalStateException("The demo's papers can all be made, not " + id);
    }

    private static String title(Grade grade, Section section, int number) {
        return "%s, %s, no. %d"
                .formatted(
                        grade.name().in(Locale.ENGLISH), section.name().in(Locale.ENGLISH), number);
    }

    private Task wished(String title, Wish wish, int lesson) {
        Wish customary =
                wish instanceof ColumnWish columns ? columns.withCustomsOfPractice() : wish;
        if (Maker.make(customary, 10, chance.nextLong()) instanceof Made.Found found) {
            return new Task(title, found.problems(), lesson);
        }
        throw new IllegalStateException("The demo's sheets can all be made, not so: " + title);
    }
}
