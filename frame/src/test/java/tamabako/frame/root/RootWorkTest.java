package tamabako.frame.root;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tamabako.frame.Cause;
import tamabako.frame.Frame;
import tamabako.frame.Habits;
import tamabako.frame.Rounding;
import tamabako.frame.Setup;
import tamabako.frame.SquareRootWay;
import tamabako.frame.Trace;
import tamabako.frame.Unworkable;
import tamabako.frame.Working;

/// Roots: the handbooks' states and remainders, and sums that cannot be worked.
///
/// Sources: HF = Heffelfinger and Flom, Abacus: Mystery of the Bead; KT = F. Kato's method as told
/// there; WB = Using an Abacus, Wikibooks. States that the source does not print follow from its
/// rule; a source may print one state where two steps are told apart here.
class RootWorkTest {

    private static final Setup DOUBLE_ROOT =
            Setup.COMMON.with(Habits.COMMON.with(SquareRootWay.DOUBLE_ROOT));

    @ParameterizedTest
    @CsvSource({
        "'KT (which misprints 2 for 8 on C)', 2, 729,"
                + " 0007290 0203290 0201645 0280045 0270245 0270000, 27",
        "KT, 2, 234256, 00234256 04074256 04037128 04901128 04805128 04801928 04840008 04840000,"
                + " 484",
        "KT, 3, 59319, 000000059319 000030032319 090030032319 090030305319 090030350819"
                + " 090030359009 090039089009 090039008009 090039000729 090039000000, 39",
    })
    void statesOfAHandbookExample(
            String source, int degree, BigDecimal of, String states, BigDecimal root) {
        for (Rounding rounding : Rounding.values()) {
            Working working = RootWork.work(degree, of, 0, rounding, Setup.COMMON);

            List<String> rests = working.trace().rests().stream().map(Frame::digits).toList();
            assertThat(rests).as(source).containsSubsequence(states.split(" ", -1));
            assertThat(rests.getLast()).isEqualTo(states.substring(states.lastIndexOf(' ') + 1));
            assertThat(working.outcome().answer()).isEqualTo(root);
        }
    }

    /// Source: HF, 23 rods with the root on LMN; the later remainders by arithmetic: 51064 - 37³ =
    /// 411, and 411811 is 3 × 370² + 3 × 370 + 1.
    @Test
    void statesOfACubeRootOnTwentyThreeRods() {
        Setup setup = Setup.COMMON.withRods(23).withUnit(14);

        Working working = RootWork.work(3, new BigDecimal(51064811), 0, Rounding.DOWN, setup);

        List<Frame> rests = working.trace().rests();
        assertThat(rests.stream().map(Frame::digits).toList())
                .startsWith("00000000000000051064811")
                .containsSubsequence(
                        "00000000000300024064811",
                        "09000000000300024064811",
                        "09000000000370000411811",
                        "11100000000370000411811")
                .endsWith("11100000000371000000000");
        assertThat(working.outcome().answer()).isEqualTo(new BigDecimal(371));
    }

    /// Source: KT for 897, HF for the others.
    @ParameterizedTest
    @CsvSource({"721734273, 897", "110592, 48", "262144, 64"})
    void cubeRootsOfTheHandbooks(BigDecimal of, BigDecimal root) {
        Working working = RootWork.work(3, of, 0, Rounding.DOWN, Setup.COMMON);

        assertThat(working.outcome().answer()).isEqualTo(root);
        assertThat(working.outcome().remainder()).contains(BigDecimal.ZERO);
    }

    /// Source: WB, square root of 456.7890123 by the double root. A remainder is that of the groups
    /// of two digits used so far.
    @ParameterizedTest
    @CsvSource({"1, 2, 0", "2, 21, 15", "3, 213, 309", "4, 2137, 1121", "5, 21372, 26628"})
    void rootsAndRemaindersByTheDoubleRoot(int digit, BigDecimal root, BigDecimal remainder) {
        BigDecimal of = new BigDecimal("456.7890123");
        Working working = RootWork.work(2, of, 3, Rounding.DOWN, DOUBLE_ROOT);

        Frame after = after(working.trace(), new Cause.SquareTaken(digit, root.intValue() % 10));
        BigDecimal left = after.value(after.lowest(), 1 - digit).scaleByPowerOfTen(2 * digit);

        assertThat(left.setScale(0, RoundingMode.DOWN)).isEqualByComparingTo(remainder);
        assertThat(working.outcome().answer().scaleByPowerOfTen(digit - 2))
                .isBetween(root, root.add(BigDecimal.ONE));
    }

    /// Source: WB, its end: 21.37262...
    @Test
    void theDoubleRootEndsAsPublished() {
        Working working =
                RootWork.work(2, new BigDecimal("456.7890123"), 5, Rounding.DOWN, DOUBLE_ROOT);

        assertThat(working.outcome().answer()).isEqualTo(new BigDecimal("21.37262"));
    }

    /// Source: HF, the square root of 2 by Kato's half-nine-nine: the problem and the first steps;
    /// the later half remainders by arithmetic.
    @ParameterizedTest
    @CsvSource({
        "2, 4, 0.02",
        "3, 1, 0.00595",
        "4, 4, 0.000302",
        "5, 2, 0.00001918",
        "6, 1, 0.00000503795",
        "7, 3, 7.953155E-7",
        "8, 5, 8.8208875E-8",
    })
    void halfRemaindersOfTheRootOfTwo(int digit, int rootDigit, BigDecimal half) {
        Working working = RootWork.work(2, BigDecimal.TWO, 7, Rounding.DOWN, Setup.COMMON);

        Frame after = after(working.trace(), new Cause.HalfSquareTaken(digit, rootDigit));

        assertThat(after.value(after.lowest(), -digit).scaleByPowerOfTen(2))
                .isEqualByComparingTo(half);
        assertThat(working.outcome().answer()).isEqualTo(new BigDecimal("1.4142135"));
    }

    @Test
    void theFirstHalfRemainderOfTheRootOfTwoIsOneHalf() {
        Working working = RootWork.work(2, BigDecimal.TWO, 7, Rounding.DOWN, Setup.COMMON);

        Frame after = after(working.trace(), new Cause.Halved(0));

        assertThat(after.value(after.lowest(), -1).scaleByPowerOfTen(2))
                .isEqualByComparingTo(new BigDecimal("0.5"));
    }

    /// Source: WB, the square root of 200703; half remainders of the groups used so far.
    @ParameterizedTest
    @CsvSource({"2, 44, 35.5", "3, 447, 447", "4, 4479, 4429.5", "5, 44799, 39799.5"})
    void halfRemaindersOfARootOfSixDigits(int digit, BigDecimal root, BigDecimal half) {
        Working working = RootWork.work(2, new BigDecimal(200703), 2, Rounding.DOWN, Setup.COMMON);

        Frame after =
                after(working.trace(), new Cause.HalfSquareTaken(digit, root.intValue() % 10));
        BigDecimal remainder =
                after.value(after.lowest(), 2 - digit)
                        .multiply(BigDecimal.TWO)
                        .scaleByPowerOfTen(2 * digit - 2);

        assertThat(remainder.setScale(0, RoundingMode.DOWN))
                .isEqualByComparingTo(half.multiply(BigDecimal.TWO));
        assertThat(after.value(3 - digit, 2).scaleByPowerOfTen(digit - 3))
                .isEqualByComparingTo(root);
    }

    /// Source: WB, its first half remainder and its end: 447.998883927...
    @Test
    void theRootOfSixDigitsBeginsAndEndsAsPublished() {
        Working working = RootWork.work(2, new BigDecimal(200703), 9, Rounding.DOWN, Setup.COMMON);

        Frame halved = after(working.trace(), new Cause.Halved(4));

        assertThat(halved.rod(0).value()).isEqualTo(2);
        assertThat(working.outcome().answer()).isEqualTo(new BigDecimal("447.998883927"));
    }

    private static Frame after(Trace trace, Cause cause) {
        List<Frame> states = trace.states();
        for (int i = trace.steps().size() - 1; i >= 0; i--) {
            if (trace.steps().get(i).cause().entry().equals(cause)) {
                return states.get(i + 1);
            }
        }
        throw new AssertionError("No step serves " + cause + ".");
    }

    @Test
    void theRootOfZeroIsZero() {
        for (int degree = 2; degree <= 3; degree++) {
            Working working =
                    RootWork.work(degree, BigDecimal.ZERO, 2, Rounding.DOWN, Setup.COMMON);

            assertThat(working.outcome().answer()).isEqualTo(BigDecimal.ZERO);
            assertThat(working.outcome().remainder()).contains(BigDecimal.ZERO);
            assertThat(working.trace().steps()).isEmpty();
        }
    }

    @Test
    void aRootBeyondThePlacesAskedForIsAllRemainder() {
        BigDecimal of = new BigDecimal("0.000064");
        for (int degree = 2; degree <= 3; degree++) {
            Working working = RootWork.work(degree, of, 1, Rounding.DOWN, Setup.COMMON);

            assertThat(working.outcome().answer()).isEqualTo(BigDecimal.ZERO);
            assertThat(working.outcome().remainder()).contains(of);
        }
    }

    @Test
    void aCubeOfNinesFindsRoomForItsLongQuotient() {
        Working working = RootWork.work(3, new BigDecimal(999999), 0, Rounding.DOWN, Setup.COMMON);

        assertThat(working.outcome().answer()).isEqualTo(new BigDecimal(99));
        assertThat(working.outcome().remainder()).contains(new BigDecimal(29700));
        assertThat(after(working.trace(), new Cause.TrialDigit(3, 1)).digits()).contains("9010");
    }

    @Test
    void aCubeThatCannotBeTakenMakesTheDigitSmaller() {
        // 3 × 10 × 9 × (10 + 9) = 5130 can be taken from 6858 - 1000, and 9³ = 729 as well only
        // from 6859 - 1000.
        Working working = RootWork.work(3, new BigDecimal(6858), 0, Rounding.DOWN, Setup.COMMON);

        assertThat(working.trace().steps().stream().map(step -> step.cause()).toList())
                .contains(
                        new Cause.SquareTaken(2, 9),
                        new Cause.RevisedDown(0, 8),
                        new Cause.CubeTaken(2, 8));
        assertThat(working.outcome().answer()).isEqualTo(new BigDecimal(18));
        assertThat(working.outcome().remainder()).contains(new BigDecimal(6858 - 18 * 18 * 18));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 4})
    void anotherDegreeIsNamed(int degree) {
        assertThatThrownBy(
                        () -> RootWork.work(degree, BigDecimal.TEN, 0, Rounding.DOWN, Setup.COMMON))
                .isInstanceOf(Unworkable.class)
                .hasMessageStartingWith("Roots of degree 2 and 3 are worked, not " + degree + ".");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2 | -729 | 0 | -729 is below 0, so it has no root on the frame.",
                "2 | 729 | -1 | An answer is worked to 0 to 12 decimal places, not -1.",
                "3 | 729 | 13 | An answer is worked to 0 to 12 decimal places, not 13.",
                "2 | 200703 | 12 | √200703 needs 32 rods to be worked, and the frame has 31.",
                "3 | 51064812 | 4 | ∛51064812 needs 32 rods to be worked, and the frame has 31.",
                "3 | 1E+99999999 | 0 | 1E+99999999 needs 100000000 rods to be worked,",
                "2 | 1E+40 | 0 | √10000000000000000000000000000000000000000 needs 44 rods to be",
            })
    void aRootThatCannotBeWorkedIsNamed(int degree, BigDecimal of, int places, String message) {
        assertThatThrownBy(() -> RootWork.work(degree, of, places, Rounding.DOWN, Setup.COMMON))
                .isInstanceOf(Unworkable.class)
                .hasMessageStartingWith(message);
    }

    @Test
    void aFrameTooShortOrAUnitRodWithoutRoomIsNamed() {
        assertThatThrownBy(() -> work(2, 729, Setup.COMMON.withRods(5)))
                .hasMessageStartingWith("√729 needs 6 rods to be worked, and the frame has 5.");
        assertThatThrownBy(() -> work(2, 234256, Setup.COMMON.withRods(6).withUnit(2)))
                .hasMessageStartingWith("√234256 needs 8 rods to be worked, and the frame has 6.");
        assertThatThrownBy(() -> work(2, 729, Setup.COMMON.withRods(9).withUnit(6)))
                .hasMessageStartingWith(
                        "Rod 6 from the left cannot be the unit rod on a frame of 9 rods");
        assertThatThrownBy(() -> work(2, 729, Setup.COMMON.withRods(9).withUnit(1)))
                .hasMessageStartingWith(
                        "Rod 1 from the left cannot be the unit rod on a frame of 9 rods");
        assertThatThrownBy(() -> work(3, 59319, Setup.COMMON.withRods(23).withUnit(3)))
                .hasMessageStartingWith(
                        "Rod 3 from the left cannot be the unit rod on a frame of 23 rods");
        assertThat(work(2, 729, Setup.COMMON.withRods(6)).outcome().answer())
                .isEqualTo(new BigDecimal(27));
        assertThat(work(2, 234256, Setup.COMMON.withRods(8).withUnit(4)).trace().end().digits())
                .isEqualTo("04840000");
    }

    private static Working work(int degree, int of, Setup setup) {
        return RootWork.work(degree, new BigDecimal(of), 0, Rounding.DOWN, setup);
    }
}
