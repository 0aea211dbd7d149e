package tamabako.desk.work;

import static tamabako.testkit.Golden.assertGolden;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.problems.text.ProblemText;

class WorkTextTest {

    @ParameterizedTest
    @CsvSource({
        "column, en, 54 - 29 + 38",
        "column, ja, 54 - 29 + 38",
        "below-zero, en, 0 - 95 + 118",
        "product, en, 306 x 4",
        "quotient, ja, 1225 / 35",
        "root, en, √729",
        "root, ja, ∛59319",
    })
    void aWorkedSumReadsAsATeacherWouldSayIt(String name, String language, String sum) {
        Worked worked = WorkWay.COMMON.work(ProblemText.parse(sum));

        assertGolden(
                "work-%s-%s.txt".formatted(name, language),
                new WorkText(Locale.of(language)).of(worked) + "\n");
    }
}
