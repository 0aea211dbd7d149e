package tamabako.problems.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.problems.Unreadable;
import tamabako.problems.grade.ExamOutcome;
import tamabako.problems.grade.ExamOutcome.Came;

/// Outcomes of exams as lines of JSON, and lines that are none.
class OutcomeJsonTest {

    private static final String LINE =
            """
            {"pupil":"aoi","outcome":"passed","ladder":"dan-six-sections","grade":"dan",\
            "day":"2026-06-14","rank":"jun-2","points":{"columns":120,"products":115}}\
            """;

    @Test
    void whatIsWrittenIsReadAgain() {
        OutcomeJson.OfPupil read = OutcomeJson.find(LINE, "abacus-one-sheet").orElseThrow();

        assertThat(read.outcome())
                .isEqualTo(
                        new ExamOutcome(
                                LocalDate.of(2026, 6, 14),
                                "dan-six-sections",
                                "dan",
                                Came.PASSED,
                                Optional.of("jun-2"),
                                Map.of("columns", 120, "products", 115)));
        assertThat(OutcomeJson.write(read.pupil(), read.outcome())).hasToString(LINE);
    }

    @Test
    void withoutALadderItIsTheOneThatIsAskedFor() {
        String line = "{\"outcome\":\"not-sat\",\"grade\":\"3\",\"day\":\"2026-06-14\"}";

        OutcomeJson.OfPupil read = OutcomeJson.find(line, "abacus-one-sheet").orElseThrow();

        assertThat(read.outcome().ladder()).isEqualTo("abacus-one-sheet");
        assertThat(read.outcome().isSat()).isFalse();
        assertThat(read.pupil()).isEmpty();
    }

    @Test
    void anAttemptIsNoOutcomeWhateverItCarriesBeside() {
        String attempt =
                "{\"problem\":{\"kind\":\"column\",\"rows\":[\"1\"]},\"answer\":\"1\",\"outcome\":1}";

        assertThat(OutcomeJson.find(attempt, "ours")).isEmpty();
        assertThat(OutcomeJson.find("{\"answer\":\"\\\"outcome\\\"\"}", "ours")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    {"outcome":"won","grade":"3","day":"2026-06-14"}                       | outcome: "won" is not known here. Use one of these: passed, not-passed, not-sat.
                    {"outcome":"passed","day":"2026-06-14"}                                | The key "grade" is missing.
                    {"outcome":"passed","grade":"3"}                                       | The key "day" is missing.
                    {"outcome":"passed","grade":"3","day":"14 June"}                       | day: "14 June" is not the kind of value
                    {"outcome":"passed","grade":"3","day":"2026-02-30"}                    | day: "2026-02-30" is not the kind of value
                    {"outcome":"passed","grade":"3","day":"2026-06-14","score":1}          | The key "score" is not known here.
                    {"outcome":"not-passed","grade":"3","day":"2026-06-14","rank":"1"}     | outcome: not-passed is not known here. Use one of these: passed.
                    {"outcome":"passed","grade":"3","day":"2026-06-14","points":80}        | points: 80 is not the kind of value
                    {"outcome":"passed","grade":"3","day":"2026-06-14","points":{"a":-1}}  | points.a: -1 does not fit here. Write a whole number from 0 to 99999.
                    {"outcome":"passed","grade":"3","day":"2026-06-14","points":{"a":1.5}} | points.a: 1.5 does not fit here.
                    """)
    void whatCannotBeReadIsNamed(String line, String said) {
        assertThatThrownBy(() -> OutcomeJson.find(line, "ours"))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining(said);
    }
}
