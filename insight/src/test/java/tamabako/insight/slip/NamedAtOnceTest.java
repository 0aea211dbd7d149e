package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// What a teacher who knows the slip names at once stands first or second.
///
/// The slips are those that teachers name (carry or borrow forgotten, rows, signs, 1 and 7, 0 and
/// 6, beads left on, ga-byō, table, empty places, quotient not revised); the sums were made by hand
/// for this test, and what is written was worked out with the slip.
class NamedAtOnceTest {

    private static final SlipFinder FINDER = new SlipFinder(Rates.shipped());

    @ParameterizedTest
    @CsvSource({
        "367 258, 525, carry-left-out",
        "28 35, 53, carry-left-out",
        "999 1, 900, carry-left-out",
        "503 -218, 385, borrow-left-out",
        "1000 -1, 1099, borrow-left-out",
        "4 3, 9, five-complement-wrong",
        "17 -3, 19, five-complement-wrong",
        "12 -4, 6, ten-complement-wrong",
        "13 -4, 7, ten-complement-wrong",
        "1700 1325, 3525, five-bead",
        "58 47, 155, five-bead",
        "4821 317 9054 668 -2175 743, 12760, row-skipped",
        "4821 317 9054 668 -2175 743, 14096, row-twice",
        "4821 317 9054 668 -2175 743, 17778, sign-missed",
        "47 86 -29 31 58, 162, row-skipped",
        "815 3642 297 1184, 5338, digit-misread",
        "815 3612 297 1584, 6368, digit-misread",
        "5213 4602 871, 10986, digit-misread",
        "415 69 832 270, 1613, digits-swapped-reading",
        "5012 437 8830 261, 18473, row-on-neighbour-rod",
        "12.5 3.75 40.2, 90.2, row-on-neighbour-rod",
        "41263 58971 30418, 129944, line-jump",
        "1234 2541 3103, 6788, written-swapped",
        "98 98, 199, written-digit",
        "2030 3030, 560, written-length",
        "12.5 3.75, 162.5, written-length",
        "40 -100, -59, complement-misread",
        "40 -100, 60, complement-misread",
        "38*2, 616, product-misplaced",
        "3*45, 27, product-misplaced",
        "43*206, 11180, product-misplaced",
        "43*206, 1118, product-misplaced",
        "46*37, 1660, product-skipped",
        "37*48, 1774, table-slip",
        "67*89, 5863, carry-left-out",
        "61*35, 2345, digit-misread",
        "84/28, 2, quotient-off-by-one",
        "84/28, 4, quotient-off-by-one",
        "5472/72, 69, quotient-off-by-one",
        "2814/14, 21, quotient-place-missed",
        "4035/5, 87, quotient-place-missed",
    })
    void theSlipStandsFirstOrSecond(String problem, String written, String kind) {
        List<Slip> slips = FINDER.find(SlipFinderTest.problem(problem), written).slips();

        assertThat(slips.stream().limit(2).map(slip -> slip.kind().word())).contains(kind);
    }

    /// A number does not begin with 0, so the empty place was closed up and not read as 026.
    @ParameterizedTest
    @CsvSource({"43*206, 1118", "57*304, 1938"})
    void aZeroThatIsClosedUpIsNotTakenForDigitsSwapped(String problem, String written) {
        Slip first = FINDER.find(SlipFinderTest.problem(problem), written).slips().getFirst();

        assertThat(first.way()).isEqualTo(Way.ZERO_CLOSED_UP);
    }
}
