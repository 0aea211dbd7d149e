package tamabako.desk.demo;

import static tamabako.frame.Technique.DIRECT;
import static tamabako.frame.Technique.FIVE_COMPLEMENT;
import static tamabako.frame.Technique.TEN_COMPLEMENT;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import tamabako.desk.web.Words;
import tamabako.problems.Problem;
import tamabako.problems.Sheet;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.Made;
import tamabako.problems.making.Maker;
import tamabako.problems.making.ProductWish;
import tamabako.problems.making.Wish;
import tamabako.problems.marking.Marker;
import tamabako.problems.marking.WritingRules;
import tamabako.problems.words.Sayable;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Identity;
import tamabako.records.KeptSheet;
import tamabako.records.Pupil;
import tamabako.records.Work;
import tamabako.records.Work.MarkedAnswer;

/// Puts the demo class in a class book, marked as demo throughout.
public final class DemoClass {

    private static final List<DemoPupil> JUNIORS =
            List.of(
                    new DemoPupil("Aoi", "ja", 5, 0),
                    new DemoPupil("Ben", "en", 20, 5),
                    new DemoPupil("Chika", "ja", 10, 0),
                    new DemoPupil("Dario", "en", 30, 5),
                    new DemoPupil("Emi", "en", 10, 0),
                    new DemoPupil("Farah", "en", 15, 0),
                    new DemoPupil("Goro", "ja", 25, 10),
                    new DemoPupil("Hana", "ja", 5, 0));
    private static final List<DemoPupil> ADULTS =
            List.of(
                    new DemoPupil("Ivo", "en", 15, 5),
                    new DemoPupil("June", "en", 10, 0),
                    new DemoPupil("Kenta", "ja", 5, 0),
                    new DemoPupil("Lina", "en", 20, 0),
                    new DemoPupil("Mirek", "en", 25, 5),
                    new DemoPupil("Noor", "en", 10, 0));

    private static final int PROBLEMS = 10;

    private final Words words;
    private final InstantSource clock;

    /// @param words the language that groups and sheets are named in
    /// @param clock tells today, from which the lessons count back
    public DemoClass(Words words, InstantSource clock) {
        this.words = words;
        this.clock = clock;
    }

    /// Puts the groups, the pupils, their sheets and their work in `book`.
    public void putIn(ClassBook book) {
        List<Pupil> juniors = keepGroup(book, "demo.juniors", JUNIORS);
        List<Pupil> adults = keepGroup(book, "demo.adults", ADULTS);
        ColumnWish fives =
                ColumnWish.of(5, 1)
                        .withMinusRows(1)
                        .allowing(DIRECT, FIVE_COMPLEMENT)
                        .requiring(FIVE_COMPLEMENT);
        ColumnWish tens =
                ColumnWish.of(5, 2)
                        .withMinusRows(1)
                        .allowing(DIRECT, FIVE_COMPLEMENT, TEN_COMPLEMENT)
                        .requiring(TEN_COMPLEMENT);
        hold(book, new Lesson("demo.fives", fives, 9), JUNIORS, juniors);
        hold(book, new Lesson("demo.products", new ProductWish(3, 2), 4), ADULTS, adults);
        hold(book, new Lesson("demo.tens", tens, 2), JUNIORS, juniors);
    }

    /// A lesson held so many days ago, on one sheet.
    private record Lesson(String title, Wish wish, int daysAgo) {}

    private void hold(ClassBook book, Lesson lesson, List<DemoPupil> members, List<Pupil> pupils) {
        KeptSheet kept = keepSheet(book, lesson);
        for (int i = 0; i < members.size(); i++) {
            Random chance = new Random(100L * lesson.daysAgo() + i);
            List<MarkedAnswer> answers = new ArrayList<>();
            for (Problem problem : kept.sheet().problems()) {
                answers.add(marked(problem, members.get(i).answer(problem, chance)));
            }
            Instant handedAt = kept.keptAt().plus(Duration.ofMinutes(20 + i));
            Optional<String> pupil = Optional.of(pupils.get(i).id());
            book.keep(Work.of(kept.sheet().id(), pupil, handedAt, answers));
        }
    }

    private List<Pupil> keepGroup(ClassBook book, String name, List<DemoPupil> members) {
        Group group = new Group(Identity.fresh(), words.say(name), true);
        List<Pupil> pupils =
                members.stream()
                        .map(member ->
                                new Pupil(
                                        Identity.fresh(),
                                        group.id(),
                                        member.name(),
                                        Locale.of(member.language()),
                                        true))
                        .toList();
        book.keep(group, pupils);
        return pupils;
    }

    private KeptSheet keepSheet(ClassBook book, Lesson lesson) {
        Made made = Maker.make(lesson.wish(), PROBLEMS, lesson.daysAgo());
        if (!(made instanceof Made.Found(List<Problem> problems, _))) {
            throw new IllegalStateException("The demo lesson cannot be held: " + made);
        }
        Sheet sheet = new Sheet(Identity.readable(), words.say(lesson.title()), problems);
        Instant day = clock.instant().minus(Duration.ofDays(lesson.daysAgo()));
        KeptSheet kept = new KeptSheet(sheet, day, true);
        book.keep(kept);
        return kept;
    }

    private static MarkedAnswer marked(Problem problem, String written) {
        var mark = Marker.mark(problem, written, WritingRules.STRICT);
        return new MarkedAnswer(written, Sayable.word(mark.getClass()));
    }
}
