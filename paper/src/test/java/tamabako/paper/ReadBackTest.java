package tamabako.paper;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.util.Map;
import org.junit.jupiter.api.Test;
import tamabako.paper.Reader.Asked;
import tamabako.paper.Reader.Told;
import tamabako.paper.wish.Part;
import tamabako.problems.Problem;
import tamabako.problems.Sheet;

/// The key of a sheet is right for what is printed on the sheet: both are read back from the files,
/// and the answers are worked again with decimal arithmetic.
class ReadBackTest {

    private static final int SHEETS = 200;

    @Test
    void theKeyAnswersWhatStandsOnTheSheet() {
        forSeeds(
                SHEETS,
                draw -> {
                    Sheet sheet = DrawnSheets.sheet(draw);
                    Pages problems = Pages.of(sheet, DrawnSheets.wish(draw, Part.SHEET));
                    Pages answers = Pages.of(sheet, DrawnSheets.wish(draw, Part.KEY));
                    Map<String, Asked> asked = Reader.sheet(problems);
                    Map<String, Told> told = Reader.key(answers);
                    assertThat(asked).as("%s", problems.text()).hasSameSizeAs(sheet.problems());
                    assertThat(told.keySet()).as("%s", answers.text()).isEqualTo(asked.keySet());
                    for (Problem problem : sheet.problems()) {
                        Reworked.check(
                                problem,
                                requireNonNull(asked.get(problem.id())),
                                requireNonNull(told.get(problem.id())));
                    }
                });
    }
}
