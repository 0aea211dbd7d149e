package tamabako.records.roster;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Year;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tamabako.records.About;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Identity;
import tamabako.records.Preferences;
import tamabako.records.Pupil;
import tamabako.records.Result;
import tamabako.records.demo.DemoClass;
import tamabako.testkit.Property;

/// What a roster does to a class book.
class ImportingTest {

    private static final String ROSTER =
            """
            name,group,roster id,born,grade,language
            Aoi,Tuesday,A-1,2017,6級,ja
            Ben,Tuesday,,2016,,en
            Chika,Thursday,C-1,,,
            """;

    @TempDir Path folder;
    private ClassBook book;

    @BeforeEach
    void open() {
        book = ClassBook.open(folder.resolve("book.sqlite"));
    }

    @AfterEach
    void close() {
        book.close();
    }

    private Plan plan(String text) {
        return Importing.plan(book, Sample.roster(text), Sample.WISHES);
    }

    private Plan write(String text) {
        return Importing.write(book, Sample.roster(text), Sample.WISHES);
    }

    private Pupil pupil(String name) {
        return book.pupils().all().stream()
                .filter(pupil -> pupil.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aPlanWritesNothing() {
        Plan plan = plan(ROSTER);
        assertThat(plan.added()).hasSize(3);
        assertThat(plan.groups()).extracting(Group::name).containsExactly("Tuesday", "Thursday");
        assertThat(book.pupils().all()).isEmpty();
        assertThat(book.groups().all()).isEmpty();
    }

    @Test
    void aRosterIsWrittenAndTheSameOnceMoreChangesNothing() {
        write(ROSTER);
        assertThat(pupil("Aoi").about())
                .isEqualTo(new About("", Optional.of(Year.of(2017)), "6級", "A-1"));
        assertThat(pupil("Aoi").language()).isEqualTo(Locale.JAPANESE);
        List<Pupil> before = book.pupils().all();

        Plan again = write(ROSTER);

        assertThat(again.same()).hasSize(3);
        assertThat(again.changesSomething()).isFalse();
        assertThat(book.pupils().all()).isEqualTo(before);
        assertThat(book.groups().all()).hasSize(2);
    }

    @Test
    void whatIsNewOfAPupilIsShownWithOldAndNewValueAndBlankCellsLeaveWhatIsThere() {
        write(ROSTER);
        Plan plan =
                plan(
                        """
                        name,roster id,group,born,grade,language
                        Aoi S.,A-1,,2018,,
                        Ben,B-1,Tuesday,,5級,
                        Chika,C-1,Tuesday,,,
                        """);
        assertThat(plan.changed())
                .extracting(Step.Changed::differences)
                .containsExactly(
                        List.of(
                                new Difference(Field.NAME, "Aoi", "Aoi S."),
                                new Difference(Field.BORN, "2017", "2018")),
                        List.of(
                                new Difference(Field.GRADE, "", "5級"),
                                new Difference(Field.ROSTER_ID, "", "B-1")));
        assertThat(plan.moved())
                .extracting(Step.Changed::differences)
                .containsExactly(List.of(new Difference(Field.GROUP, "Thursday", "Tuesday")));
    }

    @Test
    void nobodyIsRemovedAndThoseWhoAreNotInTheRosterAreCounted() {
        write(ROSTER);
        String id = pupil("Ben").id();
        Plan plan = write("name,group\nAoi,Tuesday\n");
        assertThat(plan.others()).isEqualTo(2);
        assertThat(book.pupils().all()).hasSize(3);
        assertThat(pupil("Ben").id()).isEqualTo(id);
    }

    @Test
    void badLinesAreLeftOutAndTheOthersWritten() {
        Plan plan = write("name,group,born\nAoi,Tuesday,soon\nBen,Tuesday,2016\n");
        assertThat(plan.wrong()).hasSize(1);
        assertThat(book.pupils().all()).extracting(Pupil::name).containsExactly("Ben");
    }

    @Test
    void aGroupIsTakenForThoseWithoutOne() {
        Wishes wishes = new Wishes("Beginners", Locale.JAPANESE, Year.of(2026));
        Importing.write(book, Sample.roster("名前,組\n葵,\n弁,火曜\n"), wishes);
        assertThat(book.groups().all()).extracting(Group::name).containsExactly("Beginners", "火曜");
        assertThat(pupil("葵").language()).isEqualTo(Locale.JAPANESE);
    }

    @Test
    void whatIsWrittenIsWhatWasLookedAt() {
        Plan seen = plan(ROSTER);
        Group group = Group.of("Tuesday");
        book.groups().keep(group);
        book.pupils().keep(new Pupil(Identity.fresh(), group.id(), "Ben", Locale.ENGLISH, false));

        Importing.Written written =
                Importing.write(book, Sample.roster(ROSTER), Sample.WISHES, seen.fingerprint());

        assertThat(written).isInstanceOf(Importing.Written.Outdated.class);
        assertThat(book.pupils().all()).hasSize(1);
        assertThat(
                        Importing.write(
                                book,
                                Sample.roster(ROSTER),
                                Sample.WISHES,
                                plan(ROSTER).fingerprint()))
                .isInstanceOf(Importing.Written.Done.class);
        assertThat(book.pupils().all()).hasSize(3);
    }

    @Test
    void theDemoClassIsKnownButNobodyNewIsPutIntoIt() {
        DemoClass.fill(book, Instant.parse("2026-04-16T09:00:00Z"));
        Plan plan = write("name,group\nAoi,Tuesday juniors\nZoe,Tuesday juniors\n");
        assertThat(plan.same()).hasSize(1);
        assertThat(plan.added()).hasSize(1);
        book.removeDemo();
        assertThat(book.pupils().all()).extracting(Pupil::name).containsExactly("Zoe");
    }

    @Test
    void aRosterThatWasWrittenOutChangesNothingWhenItIsReadIn() {
        List<String> names =
                List.of(
                        "Aoi",
                        "=1+1",
                        "'=x",
                        "-5",
                        "@home",
                        "+81",
                        "＝全角",
                        "佐藤　葵",
                        "O'Hara",
                        "\"quoted\"",
                        "a,b;c",
                        "ｱｵｲ",
                        "\uD83E\uDDEE",
                        "''",
                        "#1",
                        "x\u200Fy");
        Property.forSeeds(
                40,
                draw -> {
                    Group group = Group.of(draw.oneOf(names) + draw.between(1, 999_999));
                    book.groups().keep(group);
                    for (int i = 0; i < 3; i++) {
                        book.pupils()
                                .keep(
                                        new Pupil(
                                                Identity.fresh(),
                                                group.id(),
                                                draw.oneOf(names) + i,
                                                draw.oneOf(
                                                        List.of(Locale.JAPANESE, Locale.ENGLISH)),
                                                new About(
                                                        draw.oneOf(names),
                                                        draw.chance(1, 2)
                                                                ? Optional.of(
                                                                        Year.of(
                                                                                draw.between(
                                                                                        1950,
                                                                                        2020)))
                                                                : Optional.empty(),
                                                        draw.oneOf(names),
                                                        draw.chance(1, 2)
                                                                ? ""
                                                                : "id" + Identity.fresh()),
                                                new Preferences(
                                                        draw.chance(1, 2),
                                                        draw.between(0, 300),
                                                        draw.between(20, 300)),
                                                false));
                    }
                });
        for (Locale language : List.of(Locale.ENGLISH, Locale.JAPANESE)) {
            for (RosterOut.Form form : RosterOut.Form.values()) {
                byte[] bytes = RosterOut.pupils(book, form, language);
                Plan plan = Importing.plan(book, Sample.roster(bytes), Sample.WISHES);
                assertThat(plan.wrong()).isEmpty();
                assertThat(plan.notices()).isEmpty();
                assertThat(plan.changed()).isEmpty();
                assertThat(plan.same()).hasSize(120);
            }
        }
    }

    @Test
    void noCellOfAListBeginsAsAFormula() {
        Group group = Group.of("=cmd|'/c calc'!A1");
        book.groups().keep(group);
        Pupil pupil = new Pupil(Identity.fresh(), group.id(), "@Aoi", Locale.ENGLISH, false);
        book.pupils().keep(pupil);
        book.results()
                .keep(
                        new Result(
                                Identity.fresh(),
                                pupil.id(),
                                Result.Kind.EXAM,
                                "+6級",
                                LocalDate.of(2026, 4, 14),
                                Optional.of(new Result.Score(230, 300)),
                                "-"));
        String pupils =
                new String(
                        RosterOut.pupils(book, RosterOut.Form.CSV, Locale.ENGLISH),
                        java.nio.charset.StandardCharsets.UTF_8);
        String results =
                new String(
                        RosterOut.results(book, RosterOut.Form.CSV, Locale.ENGLISH),
                        java.nio.charset.StandardCharsets.UTF_8);
        assertThat(pupils)
                .startsWith("\uFEFFgroup,name,reading,grade,birth year,language,roster id")
                .contains("\r\n'=cmd|'/c calc'!A1,'@Aoi,,,,en,,no,0,100\r\n");
        assertThat(results).contains(",exam,'+6級,2026-04-14,230,300,'-\r\n");
        byte[] xlsx = RosterOut.results(book, RosterOut.Form.XLSX, Locale.JAPANESE);
        assertThat(XlsxGrid.read(xlsx).orElseThrow().lines().get(1).cells())
                .contains("'@Aoi", "検定", "'+6級", "'-");
    }
}
