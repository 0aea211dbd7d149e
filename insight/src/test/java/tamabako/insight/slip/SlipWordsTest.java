package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tamabako.frame.words.Languages;
import tamabako.problems.Problem;
import tamabako.problems.Root;
import tamabako.problems.Terms;
import tamabako.problems.text.ProblemText;
import tamabako.testkit.Golden;

class SlipWordsTest {

    private static final SlipFinder FINDER = new SlipFinder(Rates.shipped());

    @Test
    void everyLanguageHasTheSamePhrases() {
        for (Locale language : Languages.all()) {
            assertThat(new TreeSet<>(phrases(language).keySet()))
                    .as(language.toString())
                    .isEqualTo(new TreeSet<>(phrases(Locale.ENGLISH).keySet()));
        }
    }

    private static ResourceBundle phrases(Locale language) {
        return ResourceBundle.getBundle("tamabako.insight.slip.words", language);
    }

    /// Problems that between them have every way to slip.
    private static final List<Problem> EVERY_WAY =
            List.of(
                    SlipFinderTest.problem("34 78 -29 318"),
                    SlipFinderTest.problem("40 -135 118 -283"),
                    SlipFinderTest.called("47 80 -29 318"),
                    SlipFinderTest.problem("38*204"),
                    SlipFinderTest.problem("6528/32"),
                    new Root("1", 2, new BigDecimal(729), Terms.PLAIN));

    /// The first slip of every way in a sentence, then the name of every kind.
    @ParameterizedTest
    @ValueSource(strings = {"en", "ja"})
    void everyWayIsSaid(String language) {
        SlipWords words = SlipWords.of(Locale.of(language));
        Map<Way, String> sentences = new EnumMap<>(Way.class);
        for (Problem problem : EVERY_WAY) {
            EventTable table = EventTable.of(problem);
            for (int i = 0; i < table.slips(); i++) {
                Slip slip = slip(table, i);
                String sum = ProblemText.write(problem) + " ";
                sentences.computeIfAbsent(slip.way(), _ -> sum + words.say(slip));
            }
        }
        StringBuilder said = new StringBuilder();
        sentences.forEach((way, sentence) -> said.append(way.word() + ": " + sentence + '\n'));
        for (SlipKind kind : SlipKind.values()) {
            said.append(kind.word()).append(": ").append(words.name(kind)).append('\n');
        }

        assertThat(sentences.keySet()).isEqualTo(EnumSet.complementOf(EnumSet.of(Way.NONE_KNOWN)));
        assertThat(said.toString()).doesNotContain("{", "}");
        Golden.assertGolden("slips." + language + ".txt", said.toString());
    }

    private static Slip slip(EventTable table, int i) {
        long code = table.events().code(i);
        return new Slip(
                Code.way(code).kind(),
                1,
                1,
                Code.way(code),
                Code.where(code),
                Code.rod(code),
                Code.digits(code),
                BigDecimal.valueOf(table.events().tenths(i), 1));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "34 78|12|en|Row 2: the carry to the hundreds was left out: the answer is 100 too"
                        + " small.",
                "34 78|12|ja|2口目：百の位への繰り上がりを忘れた。答えが100小さくなる。",
                "13 -4|7|en|Row 2: on the ones, the digit 4 itself was used, not its complement to"
                        + " ten, 6: the answer is 2 too small.",
                "38*2|616|en|3 × 2: the product went one rod too far left: the answer is 540 too"
                        + " large.",
                "38*2|616|ja|3×2：積を1桁左に置いた。答えが540大きくなる。",
                "3.14 9.62 20.51|33.24|ja|答え：計算は合っていたが、小数第二位の7を4と書いた。答えが0.03小さくなる。",
                "1407/7|21|ja|答え：十の位の空位（0）を飛ばして詰めた。答えが180小さくなる。",
            })
    void theLikeliestSlipIsSaid(String sum, String written, Locale language, String said) {
        Slip first = FINDER.find(SlipFinderTest.problem(sum), written).slips().getFirst();

        assertThat(SlipWords.of(language).say(first)).isEqualTo(said);
    }

    @Test
    void aPlaceThatIsOneOfSeveralIsNotSaidAsIfItWereSure() {
        EventTable table = EventTable.of(SlipFinderTest.problem("314 96 205"));
        Slip sure =
                IntStream.range(0, table.slips())
                        .mapToObj(i -> slip(table, i))
                        .filter(slip -> slip.way() == Way.ROW_SKIPPED)
                        .toList()
                        .getLast();
        Slip oneOfSeveral =
                new Slip(
                        sure.kind(),
                        0.6,
                        0.2,
                        sure.way(),
                        sure.where(),
                        sure.rod(),
                        sure.digits(),
                        sure.difference());

        assertThat(SlipWords.of(Locale.ENGLISH).say(sure)).startsWith("Row 3: ");
        assertThat(SlipWords.of(Locale.ENGLISH).say(oneOfSeveral)).startsWith("Row 3 or another: ");
        assertThat(SlipWords.of(Locale.JAPANESE).say(oneOfSeveral)).startsWith("3口目など：");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "34 78|112|en|Right.",
                "34 78|12|en|Most likely: carry left out. Also possible: digit or zero too many or"
                        + " too few in writing, one bead too many or too few.",
                "1407/7|21|en|Most likely: empty place of the quotient missed.",
                "34 78|9276351|en|No known slip explains this answer: copied, guessed, too many"
                        + " slips at once, or the answer to another problem.",
                "34 78|112|ja|正解です。",
                "1407/7|21|ja|いちばん考えられるのは「商の空位の間違い」です。",
                "34 78|9276351|ja|思い当たる誤りがありません。写した、当てずっぽう、いくつもの誤りが重なった、別の問題の答えなどが考えられます。",
            })
    void aFindingHasAHeadline(String sum, String written, Locale language, String headline) {
        Finding finding = FINDER.find(SlipFinderTest.problem(sum), written);

        assertThat(SlipWords.of(language).headline(finding)).isEqualTo(headline);
    }

    @Test
    void whatCannotBeToldApartIsSaidSo() {
        Finding finding = FINDER.find(SlipFinderTest.problem("84/28"), "2");

        assertThat(SlipWords.of(Locale.ENGLISH).headline(finding))
                .startsWith(
                        "This answer alone cannot tell between: digit of the quotient or root one off,"
                                + " one bead too many or too few");
        assertThat(SlipWords.of(Locale.JAPANESE).headline(finding))
                .startsWith("この答えだけでは決められません：商や根の立て違い、一珠");
    }

    @Test
    void aLanguageWithoutAFileIsEnglish() {
        assertThat(SlipWords.of(Locale.FRENCH).language()).isEqualTo(Locale.ENGLISH);
        assertThat(SlipWords.of(Locale.JAPAN).language()).isEqualTo(Locale.JAPANESE);
    }
}
