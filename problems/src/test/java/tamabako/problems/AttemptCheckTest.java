package tamabako.problems;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tamabako.problems.json.AttemptJson;

class AttemptCheckTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"problem\":{\"kind\":\"column\",\"rows\":[\"54\",\"-29\"]},\"answer\":\"25\",\"seconds\":0.2}",
                "{\"problem\":{\"kind\":\"column\",\"rows\":[\"54\",\"-29\"]},\"answer\":\"\",\"seconds\":0}",
                "{\"problem\":{\"kind\":\"column\",\"rows\":[\"54\",\"-29\"]},\"answer\":\"25\",\"subtotals\":[\"54\",\"25\"]}",
                "{\"problem\":{\"kind\":\"product\",\"factors\":[\"306\",\"4\"]},\"answer\":\"1224\"}",
            })
    void whatCanHaveHappenedIsKept(String line) {
        Attempt attempt = AttemptJson.parse(line);

        assertThat(AttemptCheck.checked(attempt)).isSameAs(attempt);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "seconds {\"problem\":{\"kind\":\"column\",\"rows\":[\"54\",\"-29\"]},\"answer\":\"25\",\"seconds\":0.19}",
                "seconds {\"problem\":{\"kind\":\"product\",\"factors\":[\"306\",\"4\"]},\"answer\":\"1\",\"seconds\":0}",
                "subtotals {\"problem\":{\"kind\":\"column\",\"rows\":[\"5\"]},\"answer\":\"5\",\"subtotals\":[\"5\",\"5\"]}",
                "subtotals {\"problem\":{\"kind\":\"quotient\",\"dividend\":\"9\",\"divisor\":\"3\"},\"answer\":\"3\",\"subtotals\":[\"3\"]}",
            })
    void whatCannotHaveHappenedIsRefusedAtItsField(String told) {
        String field = told.substring(0, told.indexOf(' '));
        Attempt attempt = AttemptJson.parse(told.substring(field.length() + 1));

        Unreadable fault =
                catchThrowableOfType(Unreadable.class, () -> AttemptCheck.checked(attempt));

        assertThat(fault.field()).contains(field);
        assertThat(fault.getMessage()).startsWith(field + ": ").doesNotContain("{");
    }

    @Test
    void theMessageSaysHowToMendIt() {
        Attempt attempt =
                AttemptJson.parse(
                        "{\"problem\":{\"kind\":\"column\",\"rows\":[\"5432\",\"1234\"]},\"answer\":\"1\","
                                + "\"seconds\":0.1}");

        Unreadable fault =
                catchThrowableOfType(Unreadable.class, () -> AttemptCheck.checked(attempt));

        assertThat(fault.getMessage())
                .isEqualTo(
                        "seconds: 0.1 seconds are too few for 8 digits: no hand is that fast. Write"
                                + " the time that it took, or leave it out.");
        assertThat(fault.message(Locale.JAPANESE)).contains("8個の数字に0.1秒は短すぎます");
    }
}
