package tamabako.desk.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
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
import tamabako.frame.Setup;
import tamabako.frame.Step;
import tamabako.frame.Technique;
import tamabako.problems.Problem;
import tamabako.records.ClassBook;

class SheetPagesTest {

    private static final Words ENGLISH = Languages.of(List.of("ladders")).english();
    private static final InstantSource NOON =
            InstantSource.fixed(Instant.parse("2026-04-14T12:00:00Z"));
    private static final String FIVES =
            "kind=column&rows=5&least=1&most=1&minus=1&places=0&technique=direct"
                    + "&technique=five-complement&practise=five-complement&count=8&title=Fives&seed=7";

    @TempDir private Path folder;

    private ClassBook book;
    private SheetPages pages;

    @BeforeEach
    void open() {
        book = ClassBook.open(folder.resolve("book.sqlite"));
        pages = new SheetPages(book, NOON, () -> 4L, ZoneOffset.UTC);
    }

    @AfterEach
    void close() {
        book.close();
    }

    private Reply ask(Verb verb, String path, String fields) {
        Fields read = ((Fields.Read.Good) Fields.parse(fields)).fields();
        boolean look = verb == Verb.GET;
        for (Route route : pages.routes()) {
            Optional<Map<String, String>> parts = route.match(path);
            if (parts.isPresent() && route.verb() == verb) {
                return route.answer(
                        new Request(
                                verb,
                                path,
                                parts.get(),
                                look ? read : Fields.NONE,
                                look ? Fields.NONE : read,
                                ENGLISH,
                                path));
            }
        }
        throw new AssertionError("Nothing answers at " + path);
    }

    private MakeView make(String query) {
        Reply.Page page = (Reply.Page) ask(Verb.GET, "/make", query);
        return (MakeView) Objects.requireNonNull(page.model().get("make"));
    }

    @Test
    void aWishThatNobodyChangedShowsProblems() {
        assertThat(make("").problems()).hasSize(10);
    }

    @Test
    void theSameSeedShowsTheSameProblemsAndOthersAreOther() {
        List<Practised> problems = make(FIVES).problems();
        assertThat(make(FIVES).problems()).isEqualTo(problems);
        MakeView others = make(FIVES + "&other=1");
        assertThat(others.seed()).isEqualTo(5);
        assertThat(others.problems()).hasSize(8).isNotEqualTo(problems);
    }

    @Test
    void whatIsKeptIsWhatWasShownAndGrantsTheWish() {
        Reply.SeeOther on = (Reply.SeeOther) ask(Verb.POST, "/sheets", FIVES);
        String id = on.address().substring("/sheets/".length());
        var kept = book.sheets().find(id).orElseThrow();

        assertThat(kept.sheet().title()).isEqualTo("Fives");
        assertThat(kept.keptAt()).isEqualTo(NOON.instant());
        assertThat(kept.demo()).isFalse();
        assertThat(Practised.all(kept.sheet().problems(), ENGLISH.language()))
                .isEqualTo(make(FIVES).problems());
        for (Problem problem : kept.sheet().problems()) {
            assertThat(problem.work(Setup.COMMON).trace().steps())
                    .extracting(Step::technique)
                    .contains(Technique.FIVE_COMPLEMENT)
                    .isSubsetOf(Set.of(Technique.DIRECT, Technique.FIVE_COMPLEMENT));
        }
    }

    @Test
    void aWishThatCannotBeGrantedIsToldBesideItsField() {
        String query = FIVES.replace("practise=five", "practise=ten");
        MakeView view = make(query);

        assertThat(view.problems()).isEmpty();
        assertThat(view.form().fault("practise").orElse("")).contains("Ten-complement");
        assertThat(((Reply.Page) ask(Verb.POST, "/sheets", query)).status()).isEqualTo(400);
        assertThat(book.sheets().latest(5)).isEmpty();
    }

    @Test
    void theNearestWishCanBeGranted() {
        String nearest =
                make(FIVES.replace("practise=five", "practise=ten")).nearest().orElseThrow();
        MakeView view = make(nearest.substring("/make?".length()));
        assertThat(view.problems()).hasSize(8);
        assertThat(view.form().text("title")).isEqualTo("Fives");
    }

    @Test
    void everyFaultOfAFormIsToldAtOnce() {
        MakeView view = make(FIVES.replace("rows=5", "rows=five").replace("count=8", "count=0"));
        assertThat(view.form().fault("rows")).isPresent();
        assertThat(view.form().fault("count")).isPresent();
        assertThat(view.form().fault("minus")).isEmpty();
    }

    @Test
    void figuresOfFullWidthCount() {
        assertThat(make(FIVES.replace("count=8", "count=%EF%BC%91%EF%BC%92")).problems())
                .hasSize(12);
    }

    @Test
    void aKeptSheetPrintsInEveryPartLanguageAndSize() {
        Reply.SeeOther on = (Reply.SeeOther) ask(Verb.POST, "/sheets", FIVES);
        for (String part : List.of("sheet", "key", "both")) {
            String query = "part=" + part + "&language=ja&size=large";
            Reply.Bytes pdf = (Reply.Bytes) ask(Verb.GET, on.address() + ".pdf", query);
            assertThat(pdf.type()).isEqualTo("application/pdf");
            assertThat(new String(pdf.bytes(), 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
            assertThat(pdf.headers().get("Content-Disposition")).contains(part + ".pdf");
        }
    }

    @Test
    void aTitleThatThePrintFontDoesNotHaveIsTold() {
        String query = FIVES.replace("title=Fives", "title=%F0%9F%98%80");
        Reply.SeeOther on = (Reply.SeeOther) ask(Verb.POST, "/sheets", query);
        Reply.Trouble told = (Reply.Trouble) ask(Verb.GET, on.address() + ".pdf", "");
        assertThat(told.status()).isEqualTo(400);
        assertThat(told.values().getFirst().toString()).contains("U+1F600");
    }

    @Test
    void everyProblemTellsWhatItTakes() {
        for (Practised problem : make(FIVES).problems()) {
            assertThat(problem.strokes()).isPositive();
            assertThat(problem.seconds()).isPositive();
            assertThat(problem.techniques())
                    .extracting(Practised.Count::technique)
                    .contains(Technique.FIVE_COMPLEMENT)
                    .isSubsetOf(Technique.DIRECT, Technique.FIVE_COMPLEMENT);
        }
    }

    @Test
    void oneProblemIsExchangedAndTheOthersStay() {
        List<Practised> before = make(FIVES).problems();
        MakeView view = make(FIVES + "&another=3");
        assertThat(view.swaps()).isEqualTo("3-1");
        List<Practised> after = view.problems();
        for (int i = 0; i < before.size(); i++) {
            boolean isSame = after.get(i).equals(before.get(i));
            assertThat(isSame).as("problem %d", i + 1).isEqualTo(i != 2);
        }
        assertThat(after.get(2).shown().id()).isEqualTo("3");
        assertThat(after.get(2).techniques())
                .extracting(Practised.Count::technique)
                .contains(Technique.FIVE_COMPLEMENT);

        List<Practised> twice = make(FIVES + "&swaps=3-1&another=3").problems();
        assertThat(twice.get(2)).isNotIn(before.get(2), after.get(2));
        Reply.SeeOther on = (Reply.SeeOther) ask(Verb.POST, "/sheets", FIVES + "&swaps=3-1");
        var kept = book.sheets().find(on.address().substring("/sheets/".length())).orElseThrow();
        assertThat(Practised.all(kept.sheet().problems(), ENGLISH.language())).isEqualTo(after);
    }

    @Test
    void aTechniqueIsPractisedWithThoseThatAreTaughtBeforeIt() {
        MakeView view = make("by=technique&learning=ten-complement&rows=4&least=2&minus=1&seed=9");
        assertThat(view.problems()).hasSize(10);
        for (Practised problem : view.problems()) {
            assertThat(problem.techniques())
                    .extracting(Practised.Count::technique)
                    .contains(Technique.TEN_COMPLEMENT)
                    .doesNotContain(Technique.TEN_WITH_FIVE);
        }
    }

    @Test
    void aSectionOfAGradeIsPractisedAsItsPaperHasIt() {
        String section = "by=section&ladder=first-steps&grade=step-3&section=practice&seed=4";
        MakeView view = make(section);
        assertThat(view.problems()).hasSize(20);
        assertThat(view.sections().asks())
                .containsExactly(
                        "5 columns: 2 rows of 1 digit, 5 of them with 1 minus row, only direct moves",
                        "15 columns: 3 rows of 1 digit, 15 of them with 1 to 2 minus rows, only direct"
                                + " moves");
        assertThat(make(section + "&another=20").problems().subList(0, 19))
                .isEqualTo(view.problems().subList(0, 19));
        Reply.SeeOther on = (Reply.SeeOther) ask(Verb.POST, "/sheets", section);
        var kept = book.sheets().find(on.address().substring("/sheets/".length())).orElseThrow();
        assertThat(kept.sheet().title()).startsWith("Step 3");
    }

    @Test
    void aLadderThatIsNotThereLeadsToTheFirst() {
        MakeView view = make("by=section&ladder=none&grade=none&section=none&seed=4");
        assertThat(view.sections().ladders().getFirst().isChosen()).isTrue();
        assertThat(view.problems()).isNotEmpty();
    }

    @Test
    void furtherConditionsAreKept() {
        MakeView view =
                make(
                        "kind=column&rows=4&least=2&most=4&ji=12&answer=4&technique=direct"
                                + "&technique=five-complement&technique=ten-complement"
                                + "&technique=ten-with-five&seed=3");
        assertThat(view.problems()).hasSize(10);
        for (Practised problem : view.problems()) {
            assertThat(String.join("", problem.shown().rows()).replace(",", "")).hasSize(12);
            assertThat(problem.shown().answer().replace(",", "")).hasSize(4);
        }
    }
}
