package tamabako.desk.mark;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Languages;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Verb;
import tamabako.desk.web.Words;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Sheet;
import tamabako.problems.Terms;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.KeptSheet;
import tamabako.records.Pupil;
import tamabako.records.Work;

class MarkPagesTest {

    private static final Languages LANGUAGES = Languages.of(List.of());
    private static final Instant NOON = Instant.parse("2026-04-14T12:00:00Z");

    @TempDir private Path folder;

    private ClassBook book;
    private MarkPages pages;

    @BeforeEach
    void open() {
        book = ClassBook.open(folder.resolve("book.sqlite"));
        pages = new MarkPages(book, InstantSource.fixed(NOON), ZoneOffset.UTC);
        Group group = new Group("g", "Tuesday", false);
        book.groups().keep(group);
        book.pupils().keep(List.of(new Pupil("aoi", "g", "Aoi", Locale.JAPANESE, false)));
        List<Problem> problems =
                List.of(
                        column("1", "34", "78"),
                        column("2", "9731", "269"),
                        column("3", "23", "-61"));
        book.sheets().keep(new KeptSheet(new Sheet("TEST", "Three sums", problems), NOON, false));
    }

    @AfterEach
    void close() {
        book.close();
    }

    private static Column column(String id, String... rows) {
        return new Column(id, Stream.of(rows).map(BigDecimal::new).toList(), Terms.PLAIN);
    }

    private Reply ask(Verb verb, String path, Map<String, String> form, Words words) {
        for (Route route : pages.routes()) {
            Optional<Map<String, String>> parts = route.match(path);
            if (parts.isPresent() && route.verb() == verb) {
                return route.answer(
                        new Request(
                                verb,
                                path,
                                parts.get(),
                                Fields.NONE,
                                Fields.of(form),
                                words,
                                path));
            }
        }
        throw new AssertionError("Nothing answers at " + path);
    }

    private ResultView mark(Map<String, String> form, String language) {
        Words words = LANGUAGES.find(language).orElseThrow();
        Reply.SeeOther on = (Reply.SeeOther) ask(Verb.POST, "/mark/TEST", form, words);
        Reply.Page page = (Reply.Page) ask(Verb.GET, on.address(), Map.of(), words);
        return (ResultView) Objects.requireNonNull(page.model().get("result"));
    }

    @Test
    void rightAnswersCountAndAreKept() {
        ResultView result =
                mark(Map.of("a1", "112", "a2", "10,000", "a3", "−38", "pupil", "aoi"), "en");

        assertThat(result.right()).isEqualTo(3);
        assertThat(result.pupil()).hasValue("Aoi");
        Work kept = book.work().latest(1).getFirst();
        assertThat(kept.pupilId()).hasValue("aoi");
        assertThat(kept.handedAt()).isEqualTo(NOON);
        assertThat(kept.answers()).extracting(Work.MarkedAnswer::mark).containsOnly("right");
    }

    @Test
    void aCarryLeftOutIsTheLikelySlipInEitherLanguage() {
        // 34 + 78 with the carry to the hundreds left out is 12.
        AnswerView english = mark(Map.of("a1", "12"), "en").answers().getFirst();
        AnswerView japanese = mark(Map.of("a1", "12"), "ja").answers().getFirst();

        assertThat(english.mark()).isEqualTo("wrong");
        assertThat(english.right()).isEqualTo("112");
        assertThat(english.slips().orElseThrow().slips().getFirst().sentence())
                .contains("carry", "hundreds");
        assertThat(japanese.slips().orElseThrow().slips().getFirst().sentence())
                .contains("繰り上がり", "百の位");
        assertThat(english.work()).isEqualTo("/work?sum=34+%2B+78");
    }

    @Test
    void theSharesOfTheSlipsShownAreNoMoreThanAll() {
        var slips = mark(Map.of("a1", "12"), "en").answers().getFirst().slips().orElseThrow();
        assertThat(slips.slips()).isNotEmpty().hasSizeLessThanOrEqualTo(4);
        assertThat(slips.slips().stream().mapToInt(AnswerView.Likely::ofHundred).sum())
                .isBetween(1, 100);
    }

    @Test
    void commasAreNeededOnlyInTheExam() {
        Map<String, String> lesson = Map.of("a2", "10000", "rules", "easy");
        Map<String, String> exam = Map.of("a2", "10000", "rules", "strict");

        assertThat(mark(lesson, "en").answers().get(1).mark()).isEqualTo("right");
        AnswerView strict = mark(exam, "en").answers().get(1);
        assertThat(strict.mark()).isEqualTo("wrong-form");
        assertThat(strict.reason().orElse("")).contains("comma");
    }

    @Test
    void pastedAnswersKeepTheirPlacesWhereOneWasLeftOut() {
        ResultView result = mark(Map.of("pasted", "112\n\n-38\n"), "en");
        assertThat(result.answers())
                .extracting(AnswerView::mark)
                .containsExactly("right", "empty", "right");
    }

    @Test
    void aMissingAnswerHasNoSlipAndAnUnclearOneIsToldWhy() {
        ResultView result = mark(Map.of("a1", "12?4", "a3", "-38"), "en");
        assertThat(result.answers().get(0).mark()).isEqualTo("unclear");
        assertThat(result.answers().get(0).reason().orElse("")).contains("12?4");
        assertThat(result.answers().get(1).mark()).isEqualTo("empty");
        assertThat(result.answers().get(1).slips()).isEmpty();
    }

    @Test
    void nothingIsKeptOfAFormThatCannotBeTaken() {
        Reply.Page page =
                (Reply.Page) ask(Verb.POST, "/mark/TEST", Map.of("a1", " "), LANGUAGES.english());
        assertThat(page.status()).isEqualTo(400);
        assertThat(book.work().latest(1)).isEmpty();
    }
}
