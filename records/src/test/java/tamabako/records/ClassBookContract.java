package tamabako.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Year;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tamabako.problems.Column;
import tamabako.problems.Product;
import tamabako.problems.Sheet;
import tamabako.problems.Terms;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.file.LadderTexts;
import tamabako.problems.grade.file.Ladders;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperId;
import tamabako.problems.setting.PaperMade;
import tamabako.problems.setting.PaperMaker;
import tamabako.records.Work.MarkedAnswer;

/// What a class book does, whatever it is kept in. Every store has a test of its own that is this
/// one.
abstract class ClassBookContract {

    static final Instant TUESDAY = Instant.parse("2026-04-14T07:05:00Z");

    /// A database that nothing was ever put in, another one at each call.
    abstract Database fresh();

    static KeptSheet sheet(boolean demo) {
        BigDecimal five = new BigDecimal("5.25");
        return new KeptSheet(
                new Sheet(
                        Identity.readable(),
                        "火曜日 Tuesday",
                        List.of(
                                new Column("1", List.of(five, five.negate()), Terms.PLAIN),
                                new Product(
                                        "2", five, BigDecimal.TEN, Terms.PLAIN.withUnit("JPY")))),
                TUESDAY,
                demo);
    }

    static Pupil aoi(String group) {
        return new Pupil(
                Identity.fresh(),
                group,
                "葵",
                Locale.JAPANESE,
                new About("あおい", Optional.of(Year.of(2017)), "6級", "A-17"),
                new Preferences(true, 25, 80),
                false);
    }

    @Test
    void whatWasKeptIsThereAfterTheBookIsOpenedAgain() {
        Database database = fresh();
        KeptSheet kept = sheet(false);
        Pupil aoi = aoi("g");
        Work work =
                Work.of(
                        kept.sheet().id(),
                        Optional.of(aoi.id()),
                        TUESDAY,
                        List.of(
                                new MarkedAnswer(
                                        "0", "right", Optional.of(Duration.ofMillis(8400))),
                                new MarkedAnswer("52", "wrong")));
        try (ClassBook book = ClassBook.open(database)) {
            book.groups().keep(new Group("g", "Tuesday juniors", false));
            book.pupils().keep(aoi);
            book.sheets().keep(kept);
            book.work().keep(work);
        }
        try (ClassBook book = ClassBook.open(database)) {
            assertThat(book.groups().all())
                    .containsExactly(new Group("g", "Tuesday juniors", false));
            assertThat(book.pupils().find(aoi.id())).contains(aoi);
            assertThat(book.pupils().in("g")).containsExactly(aoi);
            assertThat(book.sheets().find(kept.sheet().id())).contains(kept);
            assertThat(book.sheets().latest(10)).containsExactly(kept);
            assertThat(book.work().latest(10)).containsExactly(work);
            assertThat(book.work().of(aoi.id())).containsExactly(work);
            assertThat(work.right()).isEqualTo(1);
        }
    }

    @Test
    void aPupilsYearIsKept() {
        try (ClassBook book = ClassBook.open(fresh())) {
            Group group = Group.of("Tuesday");
            Pupil aoi = aoi(group.id());
            KeptSheet kept = sheet(false);
            LocalDate day = LocalDate.of(2026, 4, 14);
            Handout toAll = Handout.of(kept.sheet().id(), group, TUESDAY);
            Handout toAoi = Handout.of(kept.sheet().id(), aoi, TUESDAY.plusSeconds(1));
            Note first = Note.of(aoi.id(), TUESDAY, "Holds the frame with the left hand now.");
            Note second = Note.of(aoi.id(), TUESDAY.plusNanos(1000), "繰り上がりを忘れる");
            Result exam =
                    new Result(
                            Identity.fresh(),
                            aoi.id(),
                            Result.Kind.EXAM,
                            "6級",
                            day,
                            Optional.of(new Result.Score(230, 300)),
                            "passed");
            Result contest =
                    new Result(
                            Identity.fresh(),
                            aoi.id(),
                            Result.Kind.CONTEST,
                            "Spring contest",
                            day.plusDays(1),
                            Optional.empty(),
                            "");
            book.whole(() -> {
                book.groups().keep(group);
                book.pupils().keep(aoi);
                book.sheets().keep(kept);
                book.handouts().keep(toAll);
                book.handouts().keep(toAoi);
                book.attendance().keep(new Attended(aoi.id(), day, Attended.How.ABSENT));
                book.attendance().keep(new Attended(aoi.id(), day, Attended.How.LATE));
                book.notes().keep(first);
                book.notes().keep(second);
                book.results().keep(exam);
                book.results().keep(contest);
            });

            assertThat(book.handouts().of(aoi)).containsExactly(toAll, toAoi);
            assertThat(book.handouts().ofSheet(kept.sheet().id())).hasSize(2);
            Attended late = new Attended(aoi.id(), day, Attended.How.LATE);
            assertThat(book.attendance().on(day)).containsExactly(late);
            assertThat(book.attendance().of(aoi.id())).containsExactly(late);
            assertThat(book.notes().of(aoi.id())).containsExactly(second, first);
            assertThat(book.results().of(aoi.id())).containsExactly(exam, contest);

            book.handouts().remove(toAoi.id());
            assertThat(book.handouts().of(aoi)).containsExactly(toAll);
            book.attendance().forget(aoi.id(), day);
            book.notes().remove(first.id());
            book.results().remove(exam.id());

            assertThat(book.attendance().on(day)).isEmpty();
            assertThat(book.notes().of(aoi.id())).containsExactly(second);
            assertThat(book.results().of(aoi.id())).containsExactly(contest);
        }
    }

    @Test
    void pupilsGroupsTeachersAndSettingsCanBeChanged() {
        try (ClassBook book = ClassBook.open(fresh())) {
            Group tuesday = Group.of("Tuesday");
            Group friday = Group.of("Friday");
            Pupil aoi = aoi(tuesday.id());
            Teacher teacher = new Teacher("t", "Ms Tanaka", Teacher.Role.ASSISTANT, false);
            book.groups().keep(tuesday);
            book.groups().keep(friday);
            book.groups().keep(new Group(friday.id(), "金曜日", false));
            book.pupils().keep(aoi);
            book.pupils().keep(aoi.inGroup(friday.id()));
            book.teachers().keep(teacher);
            book.teachers().keep(new Teacher("t", "Ms Tanaka", Teacher.Role.TEACHER, false));
            book.settings().keep("retention", "24");
            book.settings().keep("retention", "36");

            assertThat(book.groups().all())
                    .extracting(Group::name)
                    .containsExactly("Tuesday", "金曜日");
            assertThat(book.pupils().in(tuesday.id())).isEmpty();
            assertThat(book.pupils().in(friday.id())).containsExactly(aoi.inGroup(friday.id()));
            assertThat(book.teachers().all())
                    .extracting(Teacher::role)
                    .containsExactly(Teacher.Role.TEACHER);
            assertThat(book.settings().find("retention")).contains("36");
            assertThat(book.settings().find("nothing")).isEmpty();

            book.groups().remove(friday.id());
            book.teachers().remove("t");
            assertThat(book.pupils().all()).isEmpty();
            assertThat(book.teachers().all()).isEmpty();
        }
    }

    @Test
    void workForASheetThatIsNotInTheBookIsRefusedWhole() {
        try (ClassBook book = ClassBook.open(fresh())) {
            Work stray =
                    Work.of(
                            "NONE-HERE",
                            Optional.empty(),
                            TUESDAY,
                            List.of(new MarkedAnswer("1", "right")));

            assertThatThrownBy(() -> book.work().keep(stray))
                    .isInstanceOf(RecordsFailure.class)
                    .hasMessageContaining("nothing was changed");
            assertThat(book.work().latest(10)).isEmpty();
        }
    }

    @Test
    void workThatIsHandedInAgainIsKeptOnce() {
        try (ClassBook book = ClassBook.open(fresh())) {
            KeptSheet kept = sheet(false);
            book.sheets().keep(kept);
            Work work =
                    Work.of(
                            kept.sheet().id(),
                            Optional.empty(),
                            TUESDAY,
                            List.of(new MarkedAnswer("1", "right")));
            book.work().keep(work);
            book.work().keep(work);

            assertThat(book.work().latest(10)).containsExactly(work);
        }
    }

    @Test
    void severalChangesAreOneOrNone() {
        try (ClassBook book = ClassBook.open(fresh())) {
            Group group = Group.of("Tuesday");

            assertThatThrownBy(() ->
                            book.whole(() -> {
                                book.groups().keep(group);
                                book.pupils().keep(aoi(group.id()));
                                book.pupils().keep(aoi("no such group"));
                            }))
                    .isInstanceOf(RecordsFailure.class);
            assertThat(book.groups().all()).isEmpty();
            assertThat(book.pupils().all()).isEmpty();

            assertThatThrownBy(() ->
                            book.whole(() -> {
                                book.groups().keep(group);
                                throw new IllegalStateException("broken off");
                            }))
                    .hasMessage("broken off");
            assertThat(book.groups().all()).isEmpty();
        }
    }

    @Test
    void theNewestComesFirstToTheMillionthOfASecond() {
        try (ClassBook book = ClassBook.open(fresh())) {
            KeptSheet kept = sheet(false);
            book.sheets().keep(kept);
            List<Instant> moments =
                    List.of(TUESDAY, TUESDAY.plusNanos(1000), TUESDAY.plusMillis(120));
            for (Instant moment : moments) {
                book.work().keep(Work.of(kept.sheet().id(), Optional.empty(), moment, List.of()));
            }

            assertThat(book.work().latest(3))
                    .extracting(Work::handedAt)
                    .containsExactlyElementsOf(moments.reversed());
        }
    }

    @Test
    void removingTheDemoLeavesTheTeachersOwnClass() {
        try (ClassBook book = ClassBook.open(fresh())) {
            KeptSheet own = sheet(false);
            KeptSheet demo = sheet(true);
            book.groups().keep(new Group("own", "Own", false));
            book.groups().keep(new Group("demo", "Demo", true));
            book.pupils().keep(new Pupil("p", "demo", "Ben", Locale.ENGLISH, true));
            book.sheets().keep(own);
            book.sheets().keep(demo);
            book.work().keep(Work.of(demo.sheet().id(), Optional.of("p"), TUESDAY, List.of()));
            assertThat(book.hasDemo()).isTrue();

            book.removeDemo();

            assertThat(book.hasDemo()).isFalse();
            assertThat(book.groups().all()).extracting(Group::id).containsExactly("own");
            assertThat(book.pupils().all()).isEmpty();
            assertThat(book.sheets().latest(10)).containsExactly(own);
            assertThat(book.work().latest(10)).isEmpty();
        }
    }

    @Test
    void aTemplateOfTheSameNameIsReplacedAndKeepsItsIdentity() {
        try (ClassBook book = ClassBook.open(fresh())) {
            book.templates().keep("Tuesday 火曜", "rows=5", TUESDAY);
            Template first = book.templates().all().getFirst();
            book.templates().keep("Tuesday 火曜", "rows=6", TUESDAY.plusSeconds(60));
            book.templates().keep("Adults", "rows=9", TUESDAY);

            assertThat(book.templates().all())
                    .extracting(Template::name)
                    .containsExactly("Adults", "Tuesday 火曜");
            assertThat(book.templates().find(first.id()))
                    .contains(
                            new Template(
                                    first.id(), "Tuesday 火曜", "rows=6", TUESDAY.plusSeconds(60)));
            book.templates().remove(first.id());
            assertThat(book.templates().find(first.id())).isEmpty();
        }
    }

    @Test
    void anOwnLadderIsReplacedByOneOfItsName() {
        try (ClassBook book = ClassBook.open(fresh())) {
            book.ladders().keep(new OwnLadder("ours", "ladder: ours\n", TUESDAY));
            OwnLadder changed = new OwnLadder("ours", "ladder: ours # 二\n", TUESDAY);
            book.ladders().keep(changed);

            assertThat(book.ladders().all()).containsExactly(changed);
            assertThat(book.ladders().find("ours")).contains(changed);
            book.ladders().remove("ours");
            assertThat(book.ladders().all()).isEmpty();
        }
    }

    @Test
    void papersAreFoundByTheirPrintedNamesWithAllThatTheyAsk() {
        KeptPapers kept = kept("K7QM-29XF");
        List<Paper> papers = kept.papers();
        try (ClassBook book = ClassBook.open(fresh())) {
            book.papers().keep(kept);

            assertThat(book.papers().setOf(papers.getLast().id())).contains("K7QM-29XF");
            assertThat(book.papers().setOf("2222-2222-2222")).isEmpty();
            assertThat(book.papers().find("K7QM-29XF")).contains(kept);
            assertThat(book.papers().latest(3))
                    .containsExactly(
                            new KeptPapers.Entry(
                                    "K7QM-29XF",
                                    papers.getFirst().ladder(),
                                    papers.getFirst().grade().id(),
                                    2,
                                    TUESDAY));
            assertThatThrownBy(() -> book.papers().keep(kept)).isInstanceOf(RecordsFailure.class);
        }
    }

    /// Two forms of a grade that has a slip pad, kept under that name.
    static KeptPapers kept(String id) {
        List<Paper> papers = papers();
        return new KeptPapers(id, LadderTexts.text(papers.getFirst().ladder()), TUESDAY, papers);
    }

    /// Two forms of a grade that has a slip pad.
    private static List<Paper> papers() {
        Ladder ladder = Ladders.ladder("abacus-by-sections").orElseThrow();
        Grade grade =
                ladder.grades().stream()
                        .filter(one ->
                                one.sections().stream()
                                        .flatMap(section -> section.batches().stream())
                                        .anyMatch(
                                                batch -> batch.format() instanceof Format.PadLines))
                        .findFirst()
                        .orElseThrow();
        PaperMaker maker = PaperMaker.of(ladder.id(), grade);
        List<Paper> papers = new ArrayList<>();
        for (int form = 1; form <= 2; form++) {
            long bits = form;
            PaperMade made = maker.make(PaperId.draw(() -> bits), form, List.of());
            Paper paper = ((PaperMade.Found) made).paper();
            papers.add(
                    new Paper(paper.id(), paper.ladder(), paper.grade(), form, paper.sections()));
        }
        assertThat(papers.getFirst().sections()).anyMatch(section -> section.pad().isPresent());
        return papers;
    }
}
