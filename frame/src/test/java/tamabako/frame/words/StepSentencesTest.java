package tamabako.frame.words;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.frame.words.Samples.assertSaid;
import static tamabako.frame.words.Samples.step;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.frame.CarryOrder;
import tamabako.frame.Cause;
import tamabako.frame.Rod;
import tamabako.frame.Step;

/// Steps said alone.
class StepSentencesTest {

    private static final Cause ROW = new Cause.Row(2, 0);

    /// A cause, and a change that it asks for.
    private record Asked(Cause cause, int held, int digit) {}

    private static final List<Asked> EVERY_CAUSE =
            List.of(
                    new Asked(new Cause.Setting(Cause.Operand.FIRST_ROW, 1), 0, 3),
                    new Asked(new Cause.Setting(Cause.Operand.MULTIPLICAND, 1), 0, 3),
                    new Asked(new Cause.Setting(Cause.Operand.MULTIPLIER, 1), 0, 3),
                    new Asked(new Cause.Setting(Cause.Operand.DIVIDEND, 1), 0, 3),
                    new Asked(new Cause.Setting(Cause.Operand.DIVISOR, 1), 0, 3),
                    new Asked(new Cause.Setting(Cause.Operand.RADICAND, 1), 0, 3),
                    new Asked(new Cause.Row(2, 0), 4, 3),
                    new Asked(new Cause.Carry(ROW), 4, 1),
                    new Asked(new Cause.Borrow(ROW), 5, -1),
                    new Asked(new Cause.Loan(2), 0, 1),
                    new Asked(new Cause.Loan(3), 0, 9),
                    new Asked(new Cause.LoanReturned(3), 1, -1),
                    new Asked(new Cause.PartialProduct(0, 6, 0, 4), 0, 2),
                    new Asked(new Cause.PartialProduct(0, 3, 0, 2), 0, 6),
                    new Asked(new Cause.MultiplicandCleared(0), 6, -6),
                    new Asked(new Cause.TrialDigit(1, 4), 0, 4),
                    new Asked(new Cause.ProductTaken(1, 4, 1, 3), 2, -1),
                    new Asked(new Cause.RevisedDown(1, 4), 5, -1),
                    new Asked(new Cause.RevisedDown(1, 4), 8, 3),
                    new Asked(new Cause.RevisedUp(1, 5), 4, 1),
                    new Asked(new Cause.RevisedUp(1, 5), 8, -3),
                    new Asked(new Cause.RootDigit(2, 7), 0, 7),
                    new Asked(new Cause.RootProductTaken(2, 7, 1, 2), 4, -4),
                    new Asked(new Cause.SquareTaken(1, 2), 7, -4),
                    new Asked(new Cause.HalfSquareTaken(2, 7), 2, -2),
                    new Asked(new Cause.CubeTaken(1, 3), 9, -2),
                    new Asked(new Cause.Halved(0), 6, -3),
                    new Asked(new Cause.Doubled(1), 2, 2),
                    new Asked(new Cause.TripleSet(1), 0, 9),
                    new Asked(new Cause.AddedBack(2, 5, 1, 9), 0, 4),
                    new Asked(new Cause.QuotientCleared(2), 5, -5));

    /// The formulas that teachers say. Source: K. Tochio, Computation on the Soroban (1912), for
    /// ten; present course pages for five ("+3 = +5 -2") and for takings ("-9 = -10 +1").
    @ParameterizedTest
    @CsvSource({
        "1, +3, +3, +3",
        "0, +7, +7, +7",
        "8, -7, −7, −7",
        "4, +3, +3 = +5 −2, +3 = +5 −2",
        "5, -3, −3 = +2 −5, −3 = +2 −5",
        "4, +8, +8 = −2 +10, +8 = +10 −2",
        "9, +1, +1 = −9 +10, +1 = +10 −9",
        "5, +6, +6 = +1 −5 +10, +6 = +10 +1 −5",
        "3, -7, −7 = −10 +5 −2, −7 = −10 +5 −2",
        "0, -9, −9 = −10 +1, −9 = −10 +1",
        "0, -1, −1 = −10 +9, −1 = −10 +9",
    })
    void theFormulaOfAStep(int held, int digit, String removeFirst, String carryFirst) {
        Step step = step(Rod.showing(held), digit, ROW);

        assertThat(StepWords.of(Locale.ENGLISH).brief(step)).isEqualTo(removeFirst);
        assertThat(StepWords.of(Locale.JAPANESE).brief(step, CarryOrder.CARRY_THEN_REMOVE))
                .isEqualTo(carryFirst);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 5, +3, +3 = +5 −2",
        "2, 0, -7, −7 = +3 −5 −5",
        "2, 0, +6, +6 = +1 −5 +10",
        "1, 5, -9, −9",
        "0, 5, -6, −6 = −10 +5 −1",
    })
    void theFormulaOfARodWithMoreBeads(int upper, int lower, int digit, String formula) {
        Step step = step(new Rod(upper, lower), digit, ROW);

        assertThat(StepWords.of(Locale.ENGLISH).brief(step)).isEqualTo(formula);
    }

    @Test
    void everyWayToMoveADigit() {
        assertSaid(
                "digits",
                words -> {
                    Map<String, String> said = new LinkedHashMap<>();
                    for (int digit = -9; digit <= 9; digit++) {
                        for (int held = 0; held <= 9 && digit != 0; held++) {
                            Step step = step(Rod.showing(held), digit, ROW);
                            String technique = words.name(step.technique());
                            said.putIfAbsent(
                                    "%s (%s)".formatted(words.brief(step), technique),
                                    words.say(step));
                        }
                    }
                    return said;
                });
    }

    @Test
    void everyCarryAndBorrow() {
        assertSaid(
                "carries",
                words -> {
                    Map<String, String> said = new LinkedHashMap<>();
                    for (int held = 0; held <= 9; held++) {
                        Rod rod = Rod.showing(held);
                        said.put(held + " +1", words.say(step(rod, 1, new Cause.Carry(ROW))));
                        said.put(held + " −1", words.say(step(rod, -1, new Cause.Borrow(ROW))));
                    }
                    return said;
                });
    }

    @Test
    void everyRodWithMoreBeads() {
        assertSaid(
                "more-beads",
                words -> {
                    Map<String, String> said = new LinkedHashMap<>();
                    for (Rod rod : List.of(new Rod(0, 5), new Rod(1, 5), new Rod(2, 0))) {
                        for (int digit = -9; digit <= 9; digit++) {
                            if (digit != 0) {
                                Step step = step(rod, digit, ROW);
                                said.put(
                                        "%s: %s".formatted(words.read(rod), words.brief(step)),
                                        words.say(step));
                            }
                        }
                        said.put(
                                words.read(rod) + ", carry",
                                words.say(step(rod, 1, new Cause.Carry(ROW))));
                        said.put(
                                words.read(rod) + ", borrow",
                                words.say(step(rod, -1, new Cause.Borrow(ROW))));
                    }
                    return said;
                });
    }

    @Test
    void everyCause() {
        assertThat(EVERY_CAUSE.stream().map(asked -> asked.cause().getClass()).distinct())
                .hasSameSizeAs(Cause.class.getPermittedSubclasses());
        assertSaid(
                "causes",
                words -> {
                    Map<String, String> said = new LinkedHashMap<>();
                    for (Asked asked : EVERY_CAUSE) {
                        said.put(
                                "%s %+d: %s"
                                        .formatted(
                                                asked.cause(),
                                                asked.digit(),
                                                words.label(asked.cause())),
                                words.say(
                                        step(
                                                Rod.showing(asked.held()),
                                                asked.digit(),
                                                asked.cause())));
                    }
                    return said;
                });
    }
}
