package tamabako.problems.story;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tamabako.testkit.Golden.assertGolden;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tamabako.frame.Setup;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Story;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.making.Made.Part;
import tamabako.problems.making.Made.Reason;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.words.ProblemWords;

class StoryMakerTest {

    private static final Pattern NUMBER = Pattern.compile("\\d[\\d,]*(?:\\.\\d+)?");

    /// Numbers that name a unit or belong to the wording.
    private static final Pattern WORDING = Pattern.compile("(?<![\\d.,])1 (?:L|kg|dollar)\\b");

    @Test
    void everyAnswerIsWhatTheWordsAskFor() throws IOException {
        Map<String, String> formulas = formulas();
        Draws draws = new Draws(11);
        for (StoryTemplate template : StoryTemplates.usual().templates()) {
            String formula = formulas.remove(template.name());
            assertThat(formula).as(template.name()).isNotNull();
            for (int i = 0; i < 300; i++) {
                Problem problem = drawn(template, draws);
                List<BigDecimal> numbers = numbers(story(problem).in(Locale.ENGLISH));

                BigDecimal expected = Formula.value(Objects.requireNonNull(formula), numbers);

                assertThat(problem.answer().value())
                        .as(story(problem).in(Locale.ENGLISH))
                        .isEqualByComparingTo(expected);
                assertThat(problem.answer().remainder().orElse(BigDecimal.ZERO)).isZero();
            }
        }
        assertThat(formulas).isEmpty();
    }

    @Test
    void everySumIsWorkedOnTheFrameToItsAnswer() {
        Draws draws = new Draws(12);
        for (StoryTemplate template : StoryTemplates.usual().templates()) {
            for (int i = 0; i < 20; i++) {
                Problem problem = drawn(template, draws);
                List<Problem> sums = new ArrayList<>(story(problem).earlier());
                sums.add(problem);
                for (Problem sum : sums) {
                    assertThat(sum.work(Setup.COMMON).outcome().answer())
                            .isEqualByComparingTo(sum.answer().value());
                    assertThat(sum.answer().value().signum()).isPositive();
                }
            }
        }
    }

    @Test
    void whatIsRoundedIsNeverHalfway() {
        Draws draws = new Draws(13);
        for (StoryTemplate template : StoryTemplates.usual().templates()) {
            for (int i = 0; i < 300; i++) {
                Problem problem = drawn(template, draws);
                if (problem instanceof Quotient quotient) {
                    int places = quotient.places();
                    BigDecimal twice =
                            quotient.answer()
                                    .value()
                                    .multiply(quotient.divisor())
                                    .subtract(quotient.dividend())
                                    .abs()
                                    .multiply(BigDecimal.TWO);
                    assertThat(twice.scaleByPowerOfTen(places))
                            .isNotEqualByComparingTo(quotient.divisor());
                }
            }
        }
    }

    @Test
    void bothLanguagesTellTheSameNumbers() {
        Draws draws = new Draws(14);
        for (StoryTemplate template : StoryTemplates.usual().templates()) {
            Story story = story(drawn(template, draws));
            Set<BigDecimal> english = new TreeSet<>(numbers(story.in(Locale.ENGLISH)));
            Set<BigDecimal> japanese = new TreeSet<>(numbers(story.in(Locale.JAPANESE)));
            assertThat(japanese).as(story.in(Locale.JAPANESE)).containsAll(english);
            assertThat(story.in(Locale.JAPANESE)).endsWith("。").doesNotContain("¥", "{");
            assertThat(story.in(Locale.ENGLISH)).matches(".*[?.]").doesNotContain("円", "{");
        }
    }

    @Test
    void everyGradeHasFiveTemplatesAtLeastAndAllOfThemComeInARound() {
        for (int grade = 1; grade <= 6; grade++) {
            int there = StoryTemplates.usual().ofGrade(grade).size();
            assertThat(there).isGreaterThanOrEqualTo(5);
            Set<String> beginnings = new HashSet<>();
            for (Problem problem : found(StoryMaker.make(grade, there, grade))) {
                // Without numbers and names, what is left tells the template.
                beginnings.add(
                        story(problem).in(Locale.JAPANESE).replaceAll("[\\d,.]+|^[^は]{2,5}さん", ""));
            }
            assertThat(beginnings).hasSize(there);
        }
    }

    @Test
    void storiesReadAsTheyShould() {
        StringBuilder told = new StringBuilder();
        for (int grade = 6; grade >= 1; grade--) {
            told.append("Grade ").append(grade).append('\n');
            for (Problem problem :
                    found(
                            StoryMaker.make(
                                    grade, StoryTemplates.usual().ofGrade(grade).size(), 2026))) {
                told.append(story(problem).in(Locale.ENGLISH)).append('\n');
                told.append(story(problem).in(Locale.JAPANESE)).append('\n');
                told.append("  ").append(problem.answer().figures()).append('\n');
            }
        }
        assertGolden("stories.txt", told.toString());
    }

    @Test
    void aNounStandsInTheSingularBehindOne() {
        StoryText text = new StoryText("en", "{n:pencil|pencils}, {p:yen}");

        assertThat(text.fill(Map.of("n", BigDecimal.ONE, "p", new BigDecimal("1280.00")), Map.of()))
                .isEqualTo("1 pencil, ¥1,280");
        assertThat(
                        text.fill(
                                Map.of("n", new BigDecimal("1.5"), "p", new BigDecimal("0.5")),
                                Map.of()))
                .isEqualTo("1.5 pencils, ¥0.5");
    }

    @Test
    void theSameSeedTellsTheSameStories() {
        assertThat(StoryMaker.make(3, 20, 5)).isEqualTo(StoryMaker.make(3, 20, 5));
        assertThat(StoryMaker.make(3, 20, 6)).isNotEqualTo(StoryMaker.make(3, 20, 5));
    }

    @Test
    void noTwoStoriesAreAlikeAndNoneIsOneToAvoid() {
        List<Problem> first = found(StoryMaker.make(6, 200, 5));
        assertThat(first.stream().map(problem -> story(problem).in(Locale.ENGLISH)))
                .doesNotHaveDuplicates();

        List<Problem> again = found(StoryMaker.make(6, 100, 5, Set.copyOf(first)));
        assertThat(again.stream().map(StoryMakerTest::sum))
                .doesNotContainAnyElementsOf(first.stream().map(StoryMakerTest::sum).toList());
    }

    @Test
    void aStoryIsKeptInALine() {
        for (Problem problem : found(StoryMaker.make(1, 12, 4))) {
            assertThat(ProblemJson.parse(ProblemJson.line(problem))).isEqualTo(problem);
        }
    }

    @Test
    void gradesWithoutStoriesAreRefused() {
        assertThat(StoryMaker.make(7, 5, 1))
                .isEqualTo(new StoryMade.Impossible(new Reason.OutOfRange(Part.GRADE, 7, 1, 6)));
        assertThat(StoryMaker.make(3, 0, 1)).isInstanceOf(StoryMade.Impossible.class);
        assertThat(StoryMaker.make(3, 201, 1)).isInstanceOf(StoryMade.Impossible.class);
    }

    @Test
    void aMistakeInAFileIsToldByItsLine() {
        StringBuilder said = new StringBuilder();
        for (String[] change :
                new String[][] {
                    {"grade: 3", "grade: nine"},
                    {"grade: 3", "grad: 3"},
                    {"    grade: 3\n", ""},
                    {"price: 100..900 step 100", "price: 900..100"},
                    {"price: 100..900 step 100", "price: cheap * 3"},
                    {"- price < 800", "- price"},
                    {"- price < 800", "- price < cost"},
                    {"- price * pieces yen", "- cost = price * pieces yen"},
                    {"- price * pieces yen", "- price * pieces + price"},
                    {"{price:yen}", "{cost:yen}"},
                    {"{pieces}", "{pieces"},
                    {"stories:", "stories: {}"},
                    {"    en: \"", "    en: \"\""},
                    {"  - {en: Ben, ja: ベン}\n", ""},
                    {"- story: cups", "- story: [cups]"},
                }) {
            String yaml = FILE.replace(change[0], change[1]);
            assertThat(yaml).isNotEqualTo(FILE);
            assertThatThrownBy(() -> StoryTemplates.read(yaml))
                    .isInstanceOfSatisfying(
                            UnreadableStory.class,
                            mistake -> {
                                for (Locale locale : List.of(Locale.ENGLISH, Locale.JAPANESE)) {
                                    said.append(mistake.line())
                                            .append(": ")
                                            .append(ProblemWords.of(locale).say(mistake.fault()))
                                            .append('\n');
                                }
                            });
        }
        assertGolden("story-mistakes.txt", said.toString());
    }

    @Test
    void aFileOfOnesOwnIsRead() {
        StoryTemplates own = StoryTemplates.read(FILE);

        Problem problem = found(StoryMaker.make(own, 3, 1, 1)).getFirst();

        assertThat(story(problem).in(Locale.ENGLISH)).startsWith("A cup costs ¥");
        assertThat(StoryMaker.make(own, 4, 1, 1)).isInstanceOf(StoryMade.Impossible.class);
        // 8 prices and 2 numbers of cups fit.
        assertThat(StoryMaker.make(own, 3, 14, 1)).isInstanceOf(StoryMade.Found.class);
        assertThat(StoryMaker.make(own, 3, 15, 1)).isInstanceOf(StoryMade.NotFound.class);
    }

    private static final String FILE =
            """
            names:
              - {en: Aoi, ja: あおい}
              - {en: Ben, ja: ベン}
            stories:
              - story: cups
                grade: 3
                given:
                  price: 100..900 step 100
                  pieces: 2..3
                where:
                  - price < 800
                sums:
                  - price * pieces yen
                en: "A cup costs {price:yen}. What do {pieces} cost?"
                ja: "カップ1個{price:yen}です。{pieces}個の代金はいくらですか。"
            """;

    private static Problem drawn(StoryTemplate template, Draws draws) {
        for (int i = 0; i < 10_000; i++) {
            var values = template.draw(draws);
            if (values.isPresent()) {
                Map<String, String> names = Map.of("name", "Aoi", "other", "Ben");
                return template.tell("", values.get(), Map.of("en", names, "ja", names));
            }
        }
        throw new AssertionError("No numbers fit " + template.name());
    }

    private static Story story(Problem problem) {
        return (Story) problem.terms().told().orElseThrow();
    }

    private static List<BigDecimal> numbers(String text) {
        return NUMBER.matcher(WORDING.matcher(text).replaceAll(""))
                .results()
                .map(found -> new BigDecimal(found.group().replaceAll(",$", "").replace(",", "")))
                .map(BigDecimal::stripTrailingZeros)
                .toList();
    }

    private static String sum(Problem problem) {
        return switch (problem) {
            case Column column -> column.rows().toString();
            case Product product -> product.multiplicand() + "*" + product.multiplier();
            case Quotient quotient -> quotient.dividend() + "/" + quotient.divisor();
            case Root root -> root.toString();
        };
    }

    private static List<Problem> found(StoryMade made) {
        assertThat(made).isInstanceOf(StoryMade.Found.class);
        return ((StoryMade.Found) made).problems();
    }

    private static Map<String, String> formulas() throws IOException {
        Map<String, String> formulas = new TreeMap<>();
        try (InputStream stream = StoryMakerTest.class.getResourceAsStream("formulas.txt")) {
            new String(Objects.requireNonNull(stream).readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(" ", 2))
                    .forEach(line -> formulas.put(line[0], line[1].strip()));
        }
        return formulas;
    }
}
