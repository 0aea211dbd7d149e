package tamabako.records;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.records.ClassBookContract.TUESDAY;
import static tamabako.records.ClassBookContract.aoi;
import static tamabako.records.ClassBookContract.sheet;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tamabako.problems.grade.ExamOutcome;
import tamabako.problems.grade.ExamOutcome.Came;
import tamabako.records.Work.MarkedAnswer;
import tamabako.records.export.PupilExport;
import tamabako.records.export.PupilJson;

/// What the desk does with the book: work that is corrected, drafts, pupils who are erased or have
/// not been seen for long, and all that is known of one. Every store has a test that is this one.
abstract class DeskWorkContract {

    /// A database that nothing was ever put in, another one at each call.
    abstract Database fresh();

    /// Every value of every table that the database has.
    private static String everything(ClassBook book) {
        return book.door()
                .ask(handle ->
                        tables(handle.getConnection()).stream()
                                .map(table ->
                                        table
                                                + handle.createQuery("select * from " + table)
                                                        .mapToMap()
                                                        .list())
                                .collect(Collectors.joining("\n")));
    }

    private static List<String> tables(Connection connection) {
        List<String> tables = new ArrayList<>();
        try (ResultSet found =
                connection.getMetaData().getTables(null, null, "%", new String[] {"TABLE"})) {
            while (found.next()) {
                String schema = found.getString("TABLE_SCHEM");
                if (schema == null || schema.equals("public")) {
                    tables.add(found.getString("TABLE_NAME"));
                }
            }
        } catch (SQLException failed) {
            throw new AssertionError(failed);
        }
        assertThat(tables).contains("pupil", "work_answer", "draft", "pupil_pin", "room_part");
        return tables;
    }

    /// A pupil of whom every table has something.
    private static Pupil known(ClassBook book, Group group, KeptSheet kept, String name) {
        Pupil pupil = new Pupil(Identity.fresh(), group.id(), name, Locale.JAPANESE, false);
        book.pupils().keep(pupil);
        book.handouts().keep(Handout.of(kept.sheet().id(), pupil, TUESDAY));
        book.work()
                .keep(
                        Work.of(
                                        kept.sheet().id(),
                                        Optional.of(pupil.id()),
                                        TUESDAY,
                                        List.of(
                                                new MarkedAnswer(
                                                        "0",
                                                        "right",
                                                        Optional.of(Duration.ofMillis(8400))),
                                                new MarkedAnswer("51", "wrong")))
                                .taking(Optional.of(Duration.ofSeconds(95))));
        book.drafts().keep(new Draft(kept.sheet().id(), pupil.id(), List.of("1", ""), "1:2"));
        book.attendance().keep(new Attended(pupil.id(), day(0), Attended.How.LATE));
        book.pins().of(List.of(pupil.id()));
        book.notes().keep(Note.of(pupil.id(), TUESDAY, "A note on " + name));
        book.results()
                .keep(
                        new Result(
                                Identity.fresh(),
                                pupil.id(),
                                Result.Kind.EXAM,
                                "6級",
                                day(0),
                                Optional.of(new Result.Score(230, 300)),
                                "passed"));
        book.exams().keep(KeptOutcome.of(pupil.id(), exam(day(0), Came.PASSED)));
        return pupil;
    }

    private static ExamOutcome exam(LocalDate day, Came came) {
        return new ExamOutcome(
                day,
                "dan-six-sections",
                "dan",
                came,
                came == Came.PASSED ? Optional.of("jun-2") : Optional.empty(),
                Map.of("products", 115, "mind-columns", 110));
    }

    private static LocalDate day(int later) {
        return LocalDate.ofInstant(TUESDAY, ZoneOffset.UTC).plusDays(later);
    }

    @Test
    void correctedWorkHasTheNewAnswersAndKeepsItsDay() {
        try (ClassBook book = ClassBook.open(fresh())) {
            KeptSheet kept = sheet(false);
            book.sheets().keep(kept);
            Work work =
                    Work.of(
                            kept.sheet().id(),
                            Optional.empty(),
                            TUESDAY,
                            List.of(new MarkedAnswer("1", "wrong"), new MarkedAnswer("", "empty")));
            book.work().keep(work);
            Work corrected =
                    work.answered(
                                    List.of(
                                            new MarkedAnswer("0", "right"),
                                            new MarkedAnswer("52", "wrong")))
                            .taking(Optional.of(Duration.ofSeconds(61)));
            book.work().correct(corrected);
            book.work().correct(Work.of(kept.sheet().id(), Optional.empty(), TUESDAY, List.of()));

            assertThat(book.work().ofSheet(kept.sheet().id())).containsExactly(corrected);
            assertThat(book.work().find(work.id())).contains(corrected);
        }
    }

    @Test
    void anOutcomeIsCorrectedForgottenAndFoundByItsDayAndItsPupil() {
        try (ClassBook book = ClassBook.open(fresh())) {
            Group group = Group.of("Tuesday");
            Pupil aoi = aoi(group.id());
            Pupil other = aoi(group.id());
            book.groups().keep(group);
            book.pupils().keep(List.of(aoi, other));
            KeptOutcome wrong = KeptOutcome.of(aoi.id(), exam(day(0), Came.NOT_PASSED));
            KeptOutcome right = KeptOutcome.of(aoi.id(), exam(day(0), Came.PASSED));
            KeptOutcome later = KeptOutcome.of(aoi.id(), exam(day(90), Came.NOT_SAT));
            KeptOutcome others = KeptOutcome.of(other.id(), exam(day(0), Came.NOT_PASSED));
            for (KeptOutcome one : List.of(wrong, later, others, right)) {
                book.exams().keep(one);
            }

            assertThat(book.exams().of(aoi.id())).containsExactly(right, later);
            assertThat(book.exams().on(day(0))).containsExactlyInAnyOrder(right, others);
            assertThat(book.exams().pupils()).containsExactlyInAnyOrder(aoi.id(), other.id());
            book.exams().forget(aoi.id(), day(0), "dan-six-sections", "dan");
            assertThat(book.exams().of(aoi.id())).containsExactly(later);
            assertThat(book.exams().on(day(0))).containsExactly(others);
        }
    }

    @Test
    void everyTableOfAPupilHasSomethingOfThePupilWhoIsErased() {
        try (ClassBook book = ClassBook.open(fresh())) {
            KeptSheet kept = sheet(false);
            Group group = Group.of("Tuesday");
            book.groups().keep(group);
            book.sheets().keep(kept);
            known(book, group, kept, "Quillwort");
            List<Table> tables =
                    book.door()
                            .ask(handle -> {
                                try {
                                    return TableCatalogue.read(handle.getConnection());
                                } catch (SQLException failed) {
                                    throw new AssertionError(failed);
                                }
                            });

            assertThat(tables).extracting(Table::name).contains("exam_outcome");
            for (Table table : tables) {
                if (table.above().contains("pupil") || table.above().contains("exam_outcome")) {
                    long rows =
                            book.door()
                                    .ask(handle ->
                                            handle.createQuery(table.counting())
                                                    .mapTo(Long.class)
                                                    .one());
                    assertThat(rows).as(table.name()).isPositive();
                }
            }
        }
    }

    @Test
    void aDraftIsReplacedAndForgotten() {
        try (ClassBook book = ClassBook.open(fresh())) {
            KeptSheet kept = sheet(false);
            Group group = Group.of("Tuesday");
            Pupil aoi = aoi(group.id());
            book.groups().keep(group);
            book.pupils().keep(aoi);
            book.sheets().keep(kept);
            String id = kept.sheet().id();
            book.drafts().keep(new Draft(id, aoi.id(), List.of("12", "", ""), ""));
            Draft later = new Draft(id, aoi.id(), List.of("12", "", "七"), "1:30");
            book.drafts().keep(later);

            assertThat(book.drafts().ofSheet(id)).containsExactly(later);
            assertThat(book.drafts().of(aoi.id())).containsExactly(later);
            book.drafts().forget(id, aoi.id());
            assertThat(book.drafts().ofSheet(id)).isEmpty();
        }
    }

    @Test
    void anErasedPupilIsNowhereInTheBookAndTheOthersStay() {
        try (ClassBook book = ClassBook.open(fresh())) {
            KeptSheet kept = sheet(false);
            Group group = Group.of("Tuesday");
            book.groups().keep(group);
            book.sheets().keep(kept);
            Pupil gone = known(book, group, kept, "Quillwort");
            Pupil stays = known(book, group, kept, "Saxifrage");
            assertThat(everything(book)).contains(gone.id(), "Quillwort");
            String before = PupilJson.write(PupilExport.of(book, stays), TUESDAY);

            book.pupils().erase(gone.id());

            assertThat(everything(book))
                    .contains(stays.id(), "Saxifrage")
                    .doesNotContain(gone.id(), "Quillwort", "1:2|");
            assertThat(book.work().latest(9)).hasSize(1);
            assertThat(PupilJson.write(PupilExport.of(book, stays), TUESDAY)).isEqualTo(before);
        }
    }

    @Test
    void theOpenRoomsInWhichAPupilWasAreFoundUntilTheyAreClosed() {
        try (ClassBook book = ClassBook.open(fresh())) {
            RoomLog.Entry with = new RoomLog.Entry("R1", "CODE1", "{}", TUESDAY);
            RoomLog.Entry without = new RoomLog.Entry("R2", "CODE2", "{}", TUESDAY);
            book.whole(() -> {
                book.rooms().open(with);
                book.rooms().open(without);
                book.rooms().append("R1", new RoomLog.Part(1, "{\"pupil\":\"AOI\"}"));
                book.rooms().append("R2", new RoomLog.Part(1, "{\"pupil\":\"AOIDE\"}"));
            });

            assertThat(book.rooms().naming("AOI")).containsExactly(with);
            book.rooms().close("R1");
            assertThat(book.rooms().naming("AOI")).isEmpty();
        }
    }

    @Test
    void whoHasNotBeenSeenForLongIsListedTheLongestGoneFirst() {
        try (ClassBook book = ClassBook.open(fresh())) {
            KeptSheet kept = sheet(false);
            Group group = Group.of("Tuesday");
            book.groups().keep(group);
            book.sheets().keep(kept);
            LocalDate today = LocalDate.now(ZoneOffset.UTC);
            Instant longAgo = today.minusMonths(30).atStartOfDay().toInstant(ZoneOffset.UTC);
            Pupil worked = aoi(group.id());
            Pupil came = aoi(group.id());
            Pupil recent = aoi(group.id());
            Pupil added = aoi(group.id());
            Pupil sat = aoi(group.id());
            book.pupils().keep(List.of(worked, came, recent, added, sat));
            book.notes().keep(Note.of(sat.id(), longAgo, "long ago"));
            book.exams().keep(KeptOutcome.of(sat.id(), exam(today.minusMonths(2), Came.PASSED)));
            book.work()
                    .keep(Work.of(kept.sheet().id(), Optional.of(worked.id()), longAgo, List.of()));
            book.notes().keep(Note.of(recent.id(), longAgo, "long ago"));
            book.attendance()
                    .keep(new Attended(recent.id(), today.minusMonths(23), Attended.How.PRESENT));
            book.attendance()
                    .keep(new Attended(came.id(), today.minusMonths(25), Attended.How.PRESENT));

            assertThat(Retention.of(book)).isEqualTo(new Retention(24));
            assertThat(Retention.of(book).due(book, today))
                    .extracting(Retention.Due::pupil)
                    .containsExactly(worked, came);
            new Retention(26).keepIn(book);
            assertThat(Retention.of(book).due(book, today))
                    .extracting(Retention.Due::pupil)
                    .containsExactly(worked);
        }
    }

    @Test
    void theExportHasEverythingThatWasWrittenDown() throws JsonProcessingException {
        try (ClassBook book = ClassBook.open(fresh())) {
            KeptSheet kept = sheet(false);
            Group group = Group.of("Tuesday juniors");
            book.groups().keep(group);
            book.sheets().keep(kept);
            Pupil pupil = known(book, group, kept, "葵 \"<Aoi>\"");
            known(book, group, kept, "Saxifrage");

            JsonNode json =
                    new JsonMapper()
                            .readTree(PupilJson.write(PupilExport.of(book, pupil), TUESDAY));

            assertThat(json.path("format").asText()).isEqualTo("tamabako-pupil");
            assertThat(json.path("pupil").path("name").asText()).isEqualTo("葵 \"<Aoi>\"");
            assertThat(json.path("pupil").path("group").asText()).isEqualTo("Tuesday juniors");
            JsonNode work = json.path("work").path(0);
            assertThat(work.path("seconds").asInt()).isEqualTo(95);
            assertThat(work.path("answers").path(0).path("seconds").asDouble()).isEqualTo(8.4);
            assertThat(work.path("answers").path(1).path("mark").asText()).isEqualTo("wrong");
            assertThat(work.path("answers").path(1).path("problem").path("kind").asText())
                    .isEqualTo("product");
            for (String part :
                    List.of(
                            "attendance",
                            "notes",
                            "results",
                            "exams",
                            "handouts",
                            "work",
                            "drafts")) {
                assertThat(json.path(part)).as(part).hasSize(1);
            }
            JsonNode exam = json.path("exams").path(0);
            assertThat(exam.path("outcome").asText()).isEqualTo("passed");
            assertThat(exam.path("rank").asText()).isEqualTo("jun-2");
            assertThat(exam.path("points").path("products").asInt()).isEqualTo(115);
            assertThat(json.path("pupil").path("pin").asText()).matches("\\d{4}");
            assertThat(json.toString()).doesNotContain("Saxifrage");
        }
    }

    @Test
    void aFormOfAPaperIsWorkedLikeASheetAndIsNoneOfTheLastSheets() {
        KeptPapers papers = ClassBookContract.kept("K7QM-29XF");
        try (ClassBook book = ClassBook.open(fresh())) {
            book.papers().keep(papers);
            var paper = papers.papers().getLast();
            book.sheets().keep(paper, "4級 B", TUESDAY);
            book.sheets().keep(paper, "another title", TUESDAY);

            KeptSheet kept = book.sheets().find(paper.id()).orElseThrow();
            assertThat(kept.sheet().title()).isEqualTo("4級 B");
            assertThat(kept.sheet().problems()).isEqualTo(paper.problems());
            assertThat(book.sheets().latest(9)).isEmpty();
            Work work = Work.of(paper.id(), Optional.empty(), TUESDAY, List.of());
            book.work().keep(work);
            assertThat(book.work().ofSheet(paper.id())).containsExactly(work);
        }
    }
}
