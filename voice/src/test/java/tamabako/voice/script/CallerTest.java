package tamabako.voice.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tamabako.problems.Column;
import tamabako.problems.Terms;
import tamabako.voice.number.Wording;

class CallerTest {

    private static Column column(String... rows) {
        return new Column("1", Arrays.stream(rows).map(BigDecimal::new).toList(), Terms.PLAIN);
    }

    private static Called call(String tag, CallWish wish, String... rows) {
        CallWords words = CallWords.find(Locale.forLanguageTag(tag)).orElseThrow();
        return Caller.call(column(rows), words, wish);
    }

    private static CallScript script(String tag, CallWish wish, String... rows) {
        return switch (call(tag, wish, rows)) {
            case Called.Written(CallScript script) -> script;
            case Called.Refused(Unsayable reason) -> throw new AssertionError(reason);
        };
    }

    private static CallScript script(String tag, String... rows) {
        return script(tag, CallWish.USUAL, rows);
    }

    private static List<String> shown(CallScript script) {
        return script.rows().stream().map(CallLine::shown).toList();
    }

    private static List<String> said(CallScript script) {
        return script.rows().stream().map(CallLine::said).toList();
    }

    /// The whole call in Latin letters.
    private static String romaji(CallScript script) {
        return Romaji.of(script.opening().said())
                + ", "
                + said(script).stream().map(Romaji::of).collect(Collectors.joining(", "));
    }

    /// The call as wakumusu.com prints it, answer 310: negaimashite wa 19 en nari, 80 en nari, 761
    /// en nari, hiite wa 456 en nari, 94 en de wa.
    @Test
    void theFirstPublishedCall() {
        CallScript script = script("ja", "19", "80", "761", "-456", "-94");

        assertThat(script.opening().shown()).isEqualTo("願いましては");
        assertThat(shown(script))
                .containsExactly("19円なり", "80円なり", "761円なり", "引いては、456円なり", "94円では");
        assertThat(romaji(script))
                .isEqualTo(
                        "negaimashitewa, juu kyuu en nari, hachijuu en nari,"
                                + " nanahyaku rokujuu ichi en nari,"
                                + " hiitewa yonhyaku gojuu roku en nari, kyuujuu yon en dewa");
        assertThat(script.answer().shown()).isEqualTo("310円");
        assertThat(script.right().shown()).isEqualTo("ご名算");
    }

    /// The second call of wakumusu.com, answer 250: 681, 984, hiite wa 1,382, kuwaete 47, hiite wa
    /// 80 de wa.
    @Test
    void theSecondPublishedCall() {
        CallScript script = script("ja", "681", "984", "-1382", "47", "-80");

        assertThat(shown(script))
                .containsExactly("681円なり", "984円なり", "引いては、1,382円なり", "加えて、47円なり", "引いては、80円では");
        assertThat(romaji(script))
                .contains("hiitewa sen sanbyaku hachijuu ni en nari")
                .contains("kuwaete yonjuu nana en nari")
                .endsWith("hiitewa hachijuu en dewa");
        assertThat(script.answer().shown()).isEqualTo("250円");
    }

    /// ja.m.wikibooks.org: 135 en nari, ōkiku 1,801,035 en nari.
    @Test
    void aMuchLongerNumberIsAnnounced() {
        CallScript script = script("ja", "135", "1801035", "12");

        assertThat(shown(script)).containsExactly("135円なり", "大きく、1,801,035円なり", "12円では");
        assertThat(said(script).get(1)).isEqualTo("おおきく, ひゃく はちじゅう まん せん さんじゅう ご えん なり");
        assertThat(shown(script("ja", "135", "18010"))).containsExactly("135円なり", "18,010円では");
    }

    @Test
    void theOpeningMayCallForTheFrameToBeCleared() {
        CallScript script = script("ja", CallWish.USUAL.withClearing(true), "1", "2");

        assertThat(script.opening().shown()).isEqualTo("ご破算で願いましては");
        assertThat(Romaji.of(script.opening().said())).isEqualTo("gohasande negaimashitewa");
    }

    /// "Starting with" as English called sums open (to-z.net); each minus row has its sign.
    @Test
    void inEnglishEachMinusRowHasItsSign() {
        CallScript script = script("en", "123", "456", "-78", "-5", "90");

        assertThat(script.opening().shown()).isEqualTo("Starting with");
        assertThat(said(script))
                .containsExactly(
                        "one hundred twenty-three",
                        "four hundred fifty-six",
                        "minus seventy-eight",
                        "minus five",
                        "add ninety, that's all");
        assertThat(shown(script)).endsWith("minus 5", "add 90, that's all");
        assertThat(script.answer().said()).isEqualTo("five hundred eighty-six");
    }

    @Test
    void britishCallersSayAnd() {
        assertThat(said(script("en-GB", "105", "1005", "2000110")))
                .containsExactly(
                        "one hundred and five",
                        "one thousand and five",
                        "two million one hundred and ten, that's all");
    }

    @Test
    void moneyIsCalledInNotesAndCoins() {
        CallWish dollars = CallWish.USUAL.withUnit("USD");
        assertThat(said(script("en", dollars, "1", "12.50", "0.01", "-1.1", "1001")))
                .containsExactly(
                        "one dollar",
                        "twelve dollars and fifty cents",
                        "one cent",
                        "minus one dollar and ten cents",
                        "add one thousand one dollars, that's all");
        assertThat(shown(script("en", dollars, "12.5", "3"))).startsWith("$12.50");
        assertThat(said(script("ja", dollars, "8.80", "1.01", "10.10")))
                .containsExactly("はち ドル はちじゅっ セント なり", "いち ドル いっ セント なり", "じゅう ドル じゅっ セント では");
        assertThat(said(script("ja", CallWish.USUAL.withUnit("EUR"), "4.04")))
                .containsExactly("よん ユーロ よん セント では");
        assertThat(said(script("en-GB", CallWish.USUAL.withUnit("GBP"), "101.01")))
                .containsExactly("one hundred and one pounds and one penny, that's all");
    }

    @Test
    void decimalsAreSaidFigureByFigure() {
        assertThat(said(script("en", "3.14", "0.05", "10")))
                .containsExactly("three point one four", "zero point zero five", "ten, that's all");
        assertThat(said(script("ja", "1.05", "8.5", "0.4", "10.2")))
                .containsExactly("いっ てん れい ご なり", "はっ てん ご なり", "れい てん よん なり", "じゅっ てん に では");
    }

    @Test
    void theUnitOfTheProblemIsCalled() {
        Column priced =
                new Column("1", List.of(new BigDecimal("2.50")), Terms.PLAIN.withUnit("EUR"));
        CallWords english = CallWords.find(Locale.ENGLISH).orElseThrow();

        Called called = Caller.call(priced, english, CallWish.USUAL);

        assertThat(called)
                .isInstanceOfSatisfying(
                        Called.Written.class,
                        written ->
                                assertThat(said(written.script()))
                                        .containsExactly("two euros and fifty cents, that's all"));
    }

    @Test
    void sixteenDigitsAreCalledAndSeventeenAreNot() {
        assertThat(said(script("ja", "1234567890123456")).getFirst())
                .startsWith("せん にひゃく さんじゅう よん ちょう ごせん ろっぴゃく ななじゅう はち おく");
        assertThat(call("en", CallWish.USUAL, "1", "12345678901234567"))
                .isEqualTo(new Called.Refused(new Unsayable.TooLong(2, 17, 16)));
    }

    @Test
    void whatCannotBeSaidIsRefused() {
        assertThat(call("en", CallWish.USUAL.withUnit("USD"), "1", "0.005"))
                .isEqualTo(new Called.Refused(new Unsayable.TooFine(2, "USD", 2)));
        assertThat(call("en", CallWish.USUAL.withUnit("XAU"), "1"))
                .isEqualTo(new Called.Refused(new Unsayable.UnknownUnit("XAU")));
        assertThat(call("ja", CallWish.USUAL.with(Wording.GROUPS), "1"))
                .isEqualTo(new Called.Refused(new Unsayable.NoSuchWording(Wording.GROUPS)));
    }

    @Test
    void anAnswerBelowZeroIsSaidSo() {
        assertThat(script("en", "5", "-9").answer().said()).isEqualTo("minus four");
        assertThat(script("ja", "5", "-9").answer().shown()).isEqualTo("マイナス4円");
    }

    @Test
    void aLanguageIsAddedByADataFile() {
        CallScript script = script("de", "21", "-7");

        assertThat(script.opening().shown()).isEqualTo("Wir beginnen mit");
        assertThat(said(script)).containsExactly("einundzwanzig", "weniger sieben, fertig");
    }
}
