package tamabako.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tamabako.frame.CarryOrder.CARRY_THEN_REMOVE;
import static tamabako.frame.CarryOrder.REMOVE_THEN_CARRY;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/// Carries and borrows that run over several rods.
///
/// Sources: K. Tochio, Computation on the Soroban (1912): take off the complement, then carry; a
/// carry clears full rods and goes on. Heffelfinger and Flom, Abacus: Mystery of the Bead: borrow
/// first, from the nearest rod that has beads, leaving 9 on the empty rods between. The carry made
/// first: as some present courses teach, no published source.
class HandCarryTest {

    private static final Cause ENTRY = new Cause.Row(2, 0);

    @ParameterizedTest
    @CsvSource({
        "REMOVE_THEN_CARRY, 09991, 9, 09990 09900 09000 00000 10000",
        "CARRY_THEN_REMOVE, 09991, 9, 19991 10991 10091 10001 10000",
        "REMOVE_THEN_CARRY, 099, 1, 090 000 100",
        "CARRY_THEN_REMOVE, 099, 1, 199 109 100",
        "REMOVE_THEN_CARRY, 0498, 7, 0495 0405 0505",
        "CARRY_THEN_REMOVE, 0498, 7, 0598 0508 0505",
        "REMOVE_THEN_CARRY, 0048, 6, 0044 0054",
        "CARRY_THEN_REMOVE, 0048, 6, 0058 0054",
        "REMOVE_THEN_CARRY, 0043, 4, 0047",
        "CARRY_THEN_REMOVE, 0043, 4, 0047",
    })
    void anAdditionRunsOnLeftward(CarryOrder order, String start, int digit, String states) {
        Hand hand = hand(start, order);

        hand.add(0, digit, ENTRY);

        assertThat(statesOf(hand)).isEqualTo(states);
        assertThat(hand.trace().steps())
                .allMatch(step -> step.cause().entry().equals(ENTRY))
                .filteredOn(step -> step.rod() != 0)
                .allMatch(step -> step.cause().equals(new Cause.Carry(ENTRY)) && step.digit() == 1);
    }

    @ParameterizedTest
    @CsvSource({
        "REMOVE_THEN_CARRY, 1000, 7, 0000 0900 0990 0993",
        "CARRY_THEN_REMOVE, 1000, 7, 0000 0900 0990 0993",
        "REMOVE_THEN_CARRY, 5003, 8, 4003 4903 4993 4995",
        "CARRY_THEN_REMOVE, 5003, 8, 4003 4903 4993 4995",
        "REMOVE_THEN_CARRY, 0203, 8, 0103 0193 0195",
        "REMOVE_THEN_CARRY, 0003, 2, 0001",
    })
    void aTakingBorrowsFirstInBothOrders(CarryOrder order, String start, int digit, String states) {
        Hand hand = hand(start, order);

        hand.take(0, digit, ENTRY);

        assertThat(statesOf(hand)).isEqualTo(states);
        assertThat(hand.trace().steps())
                .filteredOn(step -> step.rod() != 0)
                .allMatch(
                        step -> step.cause().equals(new Cause.Borrow(ENTRY)) && step.digit() == -1);
    }

    @Test
    void aTwoDigitProductGoesOnTwoRodsTensFirst() {
        Hand hand = hand("0048", REMOVE_THEN_CARRY);

        hand.addProduct(1, 6, ENTRY);
        hand.addProduct(1, 72, ENTRY);
        hand.takeProduct(2, 8, ENTRY);
        hand.takeProduct(1, 46, ENTRY);

        assertThat(statesOf(hand)).isEqualTo("0044 0054 0024 0124 0126 0026 0046 0006 0000");
    }

    @ParameterizedTest
    @EnumSource(CarryOrder.class)
    void aCarryOffTheFrameMovesNoBead(CarryOrder order) {
        Hand hand = hand("994", order);

        assertThatThrownBy(() -> hand.add(0, 6, ENTRY))
                .isInstanceOfSatisfying(
                        Unworkable.class,
                        thrown ->
                                assertThat(thrown.reason())
                                        .isEqualTo(new Unworkable.Reason.FrameTooShort(4, 3)));
        assertThat(hand.frame().digits()).isEqualTo("994");
        assertThat(hand.steps()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(CarryOrder.class)
    void nothingToBorrowFromMovesNoBead(CarryOrder order) {
        Hand hand = hand("004", order);

        assertThatThrownBy(() -> hand.take(0, 6, ENTRY))
                .isInstanceOf(Unworkable.class)
                .hasMessage(
                        "This sum runs off the frame: it needs 4 rods, and the frame has 3. Use a"
                                + " longer frame (at most 31 rods) or smaller numbers.");
        assertThat(hand.frame().digits()).isEqualTo("004");
        assertThat(hand.steps()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"3, 4", "-1, 4", "-2, 5", "9, 10"})
    void aRodBesideTheFrameCannotBeWorked(int rod, int needed) {
        Hand hand = hand("000", REMOVE_THEN_CARRY);

        assertThatThrownBy(() -> hand.add(rod, 1, ENTRY))
                .isInstanceOfSatisfying(
                        Unworkable.class,
                        thrown ->
                                assertThat(thrown.reason())
                                        .isEqualTo(new Unworkable.Reason.FrameTooShort(needed, 3)));
        assertThatThrownBy(() -> hand.take(rod, 1, ENTRY)).isInstanceOf(Unworkable.class);
        assertThat(hand.digit(rod)).isZero();
    }

    @Test
    void zeroMovesNothingAnywhere() {
        Hand hand = hand("123", CARRY_THEN_REMOVE);

        hand.add(0, 0, ENTRY);
        hand.take(7, 0, ENTRY);

        assertThat(hand.steps()).isEmpty();
        assertThat(hand.digit(0)).isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource({"-1", "10"})
    void onlyDigitsAreAddedOrTaken(int digit) {
        Hand hand = hand("123", REMOVE_THEN_CARRY);

        assertThatThrownBy(() -> hand.add(0, digit, ENTRY))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A digit is 0 to 9, not %d.", digit);
        assertThatThrownBy(() -> hand.take(0, digit, ENTRY))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Hand hand(String digits, CarryOrder order) {
        Frame frame = Frame.clear(FrameKind.MODERN, 0, digits.length() - 1);
        for (int i = 0; i < digits.length(); i++) {
            frame = frame.with(digits.length() - 1 - i, Rod.showing(digits.charAt(i) - '0'));
        }
        return new Hand(frame, Habits.COMMON.with(order));
    }

    /// The states after the first.
    private static String statesOf(Hand hand) {
        List<Frame> states = hand.trace().states();
        return String.join(
                " ", states.subList(1, states.size()).stream().map(Frame::digits).toList());
    }
}
