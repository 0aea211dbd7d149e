package tamabako.problems.marking;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Golden.assertGolden;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.problems.Answer;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Samples;
import tamabako.problems.Terms;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.text.ProblemText;
import tamabako.problems.words.ProblemWords;

class MarkerTest {

    /// The rows of JCCI's rules for writing answers in the abacus proficiency test.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // grouping: a comma every three digits left of the unit place
                "plain | 0.25 | 0.25 | right",
                "plain | 1427.39 | 1,427.39 | right",
                "plain | 2905406 | 2,905,406 | right",
                "plain | 1427.39 | 1427.39 | comma-missing",
                "plain | 2905406 | 2905406 | comma-missing",
                "plain | 2905406 | 2905,406 | comma-misplaced",
                "plain | 2905406 | 29,05,406 | comma-misplaced",
                "plain | 2905406 | 2,905406 | comma-misplaced",
                // rounded plain answer, 0.4595 is 0.460
                "rounded | 0.4595 | 0.46 | right",
                "rounded | 0.4595 | 0.460 | trailing-zero",
                "rounded | 0.4595 | 0.4595 | other-value",
                // rounded plain answer, 5.2004 is 5.200
                "rounded | 5.2004 | 5.2 | right",
                "rounded | 5.2004 | 5.20 | trailing-zero",
                "rounded | 5.2004 | 5.200 | trailing-zero",
                // exact plain answers
                "plain | 0.45 | 0.45 | right",
                "plain | 0.45 | .45 | right",
                "plain | 0.45 | 0.450 | trailing-zero",
                "plain | 0.45 | .450 | trailing-zero",
                "plain | 5.2 | 5.2 | right",
                "plain | 5.2 | 5.20 | trailing-zero",
                "plain | 5.2 | 5.200 | trailing-zero",
                // yen
                "yen | 9528 | ¥9,528 | right",
                "yen | 9528 | ¥9,528. | right",
                "yen | 9528 | ¥9,528‾ | right",
                "yen | 9528 | 9,528 | right",
                "yen | 9528 | ¥9,528.0 | trailing-zero",
                "yen | 9528 | ¥9,528¥ | unit-behind",
                "yen | 9528 | ¥9,528円 | unit-behind",
                "yen | 9528 | 9,528¥ | unit-behind",
                // layout: on one line
                "plain | 9528 | '9,5\n28' | several-lines",
                "plain | 28 | '2\n8' | several-lines",
            })
    void theRulesForWritingAnswersHoldRowByRow(
            String kind, BigDecimal exact, String written, String mark) {
        assertThat(word(Marker.mark(asked(kind, exact), written, WritingRules.STRICT)))
                .isEqualTo(mark);
    }

    /// Common practice, no published source, and what screens and keyboards bring along.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plain | -1234 | −1,234 | right",
                "plain | -1234 | -1,234 | right",
                "plain | -1234 | ▲1,234 | right",
                "plain | -1234 | △1,234 | right",
                "plain | -1234 | － １，２３４ | right",
                "plain | -1234 | 1,234 | other-value",
                "plain | 1234 | -1,234 | other-value",
                "yen | -1234 | −¥1,234 | right",
                "yen | -1234 | ¥−1,234 | right",
                "yen | -1234 | ▲￥1,234 | right",
                "yen | -1234 | \\-1,234 | right",
                "yen | 1234 | JPY 1,234 | right",
                "yen | 1234 | $1,234 | other-unit",
                "yen | 1234 | ¥1234 | comma-missing",
                "yen | 1234 | ¥1,234.‾ | point-at-end",
                "plain | 1234 | ¥1,234 | other-unit",
                "plain | 1234 | 1,234. | point-at-end",
                "plain | 1234 | 1,234‾ | closing-mark",
                "plain | 1234 | +1,234 | plus-sign",
                "plain | 1234 | 01,234 | leading-zero",
                "plain | 45 | 045 | leading-zero",
                "plain | 0.45 | 00.45 | leading-zero",
                "plain | 0.1234 | 0.123,4 | comma-misplaced",
                "plain | 0 | 0 | right",
                "plain | 0 | -0 | minus-zero",
                "plain | 1234 | １，２３４ | right",
                "plain | 1234 | 1、234 | right",
                "plain | 0.5 | 0。5 | right",
                "plain | 1234 | ' 1,234 ' | right",
                "plain | 1234 | 1 234 | unclear",
                "plain | 1234 | 1,234 1,235 | unclear",
                "plain | 1234 | --1,234 | unclear",
                "plain | 1234 | -¥-1,234 | unclear",
                "plain | 1234 | ? | unclear",
                "plain | 1234 | 千二百 | unclear",
                "plain | 1234 | , | unclear",
                "plain | 1234 | - | unclear",
                "plain | 1234 | 1.2.3 | unclear",
                "plain | 1234 | '' | empty",
                "plain | 1234 | ' 　' | empty",
                "dollars | 12.5 | $12.50 | right",
                "dollars | 12.5 | 12.5 | right",
                "dollars | 12.5 | 12.500 | trailing-zero",
                "dollars | 12 | $12.00 | right",
            })
    void furtherFormsAreJudged(String kind, BigDecimal exact, String written, String mark) {
        assertThat(word(Marker.mark(asked(kind, exact), written, WritingRules.STRICT)))
                .isEqualTo(mark);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "100 / 7 | 14 r 2 | right",
                "100 / 7 | 14 R2 | right",
                "100 / 7 | 14r2 | right",
                "100 / 7 | 14 rem. 2 | right",
                "100 / 7 | 14 remainder 2 | right",
                "100 / 7 | 14 あまり 2 | right",
                "100 / 7 | １４あまり２ | right",
                "100 / 7 | 14余り2 | right",
                "100 / 7 | 14…2 | right",
                "100 / 7 | 14 ⋯ 2 | right",
                "100 / 7 | 14...2 | right",
                "100 / 7 | 14・・・2 | right",
                "100 / 7 | 14 | remainder-missing",
                "100 / 7 | 14 r | unclear",
                "100 / 7 | r 2 | unclear",
                "100 / 7 | 14 r 3 | other-remainder",
                "100 / 7 | 13 r 9 | other-value",
                "100 / 7 | 14 r 2 r 1 | unclear",
                "98 / 7 | 14 | right",
                "98 / 7 | 14 r 0 | right",
                "98 / 7 | 14 r 1 | other-remainder",
                "12345678 / 9999 | 1,234 r 6,912 | right",
                "12345678 / 9999 | 1,234 r 6912 | comma-missing",
                "100 / 7 to 1 place | 14.3 | right",
                "100 / 7 to 1 place | 14.3 r 2 | remainder-not-asked",
                "√730 | 27 r 1 | right",
                "√730 | 27 | right",
                "√730 | 27 r 2 | other-remainder",
                "5 + 3 | 8 r 0 | remainder-not-asked",
            })
    void remaindersAreJudged(String line, String written, String mark) {
        assertThat(word(Marker.mark(ProblemText.parse(line), written, WritingRules.STRICT)))
                .isEqualTo(mark);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1234 | right",
                "1,234 | right",
                "12,34 | comma-misplaced",
                "1234.0 | trailing-zero",
                "1235 | other-value",
            })
    void easyRulesDoNotNeedCommas(String written, String mark) {
        Problem problem = asked("plain", new BigDecimal("1234"));

        assertThat(word(Marker.mark(problem, written, WritingRules.EASY))).isEqualTo(mark);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plain | 1427.39 | 1,427.39",
                "plain | -1234567 | −1,234,567",
                "plain | 0.45 | 0.45",
                "plain | -0.5 | −0.5",
                "plain | 999 | 999",
                "plain | 0 | 0",
                "rounded | 5.2004 | 5.2",
                "yen | 9528 | ¥9,528",
                "yen | -1234 | −¥1,234",
                "dollars | 1234.5 | $1,234.50",
                "plain | 123456789012345678901234567890 | 123,456,789,012,345,678,901,234,567,890",
            })
    void theRightAnswerIsWrittenAsTheRulesAsk(String kind, BigDecimal exact, String written) {
        assertThat(Written.of(asked(kind, exact)).toString()).isEqualTo(written);
    }

    @Test
    void aRemainderIsWrittenInTheReadersLanguage() {
        Written written = Written.of(ProblemText.parse("12345678 / 9999"));

        assertThat(written.in(Locale.ENGLISH)).isEqualTo("1,234 r 6,912");
        assertThat(written.in(Locale.JAPANESE)).isEqualTo("1,234 あまり 6,912");
        assertThat(Written.of(ProblemText.parse("98 / 7"))).hasToString("14");
    }

    @Test
    void theWrittenFormOfTheRightAnswerIsAlwaysRight() {
        forSeeds(
                2_000,
                draw -> {
                    Problem problem = Samples.problem(draw);
                    Written written = Written.of(problem);

                    for (Locale locale : List.of(Locale.ENGLISH, Locale.JAPANESE)) {
                        assertThat(Marker.mark(problem, written.in(locale), WritingRules.STRICT))
                                .as("%s = %s", ProblemJson.line(problem), written)
                                .isEqualTo(new Mark.Right());
                    }
                    assertThat(
                                    Marker.mark(
                                            problem,
                                            written.toString().replace(",", ""),
                                            WritingRules.EASY))
                            .isEqualTo(new Mark.Right());
                });
    }

    @Test
    void anyOtherValueIsNeverRight() {
        forSeeds(
                2_000,
                draw -> {
                    Problem problem = Samples.problem(draw);
                    Answer answer = problem.answer();
                    BigDecimal other =
                            answer.value()
                                    .add(
                                            BigDecimal.ONE
                                                    .scaleByPowerOfTen(draw.between(-14, 10))
                                                    .multiply(
                                                            BigDecimal.valueOf(
                                                                    draw.between(1, 9))));
                    String remainder =
                            answer.remainder().map(left -> " r " + left.toPlainString()).orElse("");

                    for (WritingRules rules : List.of(WritingRules.STRICT, WritingRules.EASY)) {
                        Mark mark = Marker.mark(problem, other.toPlainString() + remainder, rules);

                        assertThat(mark)
                                .as("%s = %s", ProblemJson.line(problem), other)
                                .isInstanceOf(Mark.Wrong.class);
                        assertThat(((Mark.Wrong) mark).read()).isEqualByComparingTo(other);
                    }
                });
    }

    @Test
    void whateverIsWrittenGetsAMark() {
        List<String> pieces =
                List.of("1", "9", "0", ",", ".", "-", "¥", "円", "r", "…", " ", "\n", "x", "‾", "▲");
        forSeeds(
                3_000,
                draw -> {
                    StringBuilder written = new StringBuilder();
                    for (int i = draw.between(1, 10); i > 0; i--) {
                        written.append(draw.oneOf(pieces));
                    }
                    Mark mark =
                            Marker.mark(
                                    Samples.problem(draw), written.toString(), WritingRules.STRICT);

                    assertThat(ProblemWords.of(Locale.JAPANESE).say(mark)).isNotBlank();
                });
        assertThat(
                        Marker.mark(
                                asked("plain", BigDecimal.ONE),
                                "1".repeat(1_000_000),
                                WritingRules.STRICT))
                .isInstanceOf(Mark.Unclear.class);
    }

    @Test
    void everyMarkIsSaidInWords() {
        StringBuilder said = new StringBuilder();
        String[][] cases = {
            {"plain", "1427.39", "1,427.39"},
            {"plain", "1427.39", "1,427.93"},
            {"plain", "1427.39", ""},
            {"plain", "1427.39", "many"},
            {"plain", "1427.39", "1427.39"},
            {"plain", "1427.39", "14,27.39"},
            {"plain", "1427.39", "1,427.390"},
            {"plain", "1427.39", "01,427.39"},
            {"plain", "1427", "1,427."},
            {"plain", "1427", "1,427‾"},
            {"yen", "9528", "¥9,528円"},
            {"yen", "9528", "$9,528"},
            {"plain", "1427", "+1,427"},
            {"plain", "0", "-0"},
            {"plain", "27", "2\n7"},
            {"plain", "27", "27 r 0"}
        };
        for (String[] one : cases) {
            Problem problem = asked(one[0], new BigDecimal(one[1]));
            say(said, one[2], Marker.mark(problem, one[2], WritingRules.STRICT));
        }
        Problem division = ProblemText.parse("100 / 7");
        for (String written : List.of("14", "14 r 3")) {
            say(said, written, Marker.mark(division, written, WritingRules.STRICT));
        }

        assertGolden("marks.txt", said.toString());
    }

    private static void say(StringBuilder said, String written, Mark mark) {
        said.append(written.replace("\n", "\\n")).append('\n');
        for (Locale locale : List.of(Locale.ENGLISH, Locale.JAPANESE)) {
            said.append("  ").append(ProblemWords.of(locale).say(mark)).append('\n');
        }
    }

    /// What became of an answer, in one word: `right`, or the fault.
    private static String word(Mark mark) {
        String template =
                switch (mark) {
                    case Mark.Wrong(_, Mark.Fault fault) -> fault.template();
                    case Mark.WrongForm(_, Mark.Form form) -> form.template();
                    default -> mark.template();
                };
        return template.substring(template.indexOf('.') + 1);
    }

    /// A problem whose exact answer is `exact`: a plain column, one in yen or dollars, or a
    /// quotient rounded to three places.
    private static Problem asked(String kind, BigDecimal exact) {
        List<BigDecimal> rows = List.of(exact);
        return switch (kind) {
            case "plain" -> new Column("", rows, Terms.PLAIN);
            case "yen" -> new Column("", rows, Terms.PLAIN.withUnit("JPY"));
            case "dollars" -> new Column("", rows, Terms.PLAIN.withUnit("USD"));
            case "rounded" -> ProblemText.parse(exact.toPlainString() + " / 1 to 3 places");
            default -> throw new AssertionError(kind);
        };
    }
}
