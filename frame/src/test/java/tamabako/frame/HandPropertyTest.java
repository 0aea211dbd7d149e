package tamabako.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import tamabako.testkit.Draw;

/// Half a million drawn additions and takings agree with decimal arithmetic, and every stroke of
/// them can be played.
class HandPropertyTest {

    private static final int WORKINGS = 5_000;
    private static final int ENTRIES = 100;
    private static final Cause ENTRY = new Cause.Row(1, 0);

    @Test
    void everyDigitAnywhereComesToTheExactSum() {
        forSeeds(
                WORKINGS,
                draw -> {
                    Frame start = start(draw);
                    CarryOrder order = draw.oneOf(List.of(CarryOrder.values()));
                    Hand hand = new Hand(start, Habits.COMMON.with(order));
                    BigDecimal value = start.value();
                    for (int i = 0; i < ENTRIES; i++) {
                        int rod = draw.between(start.lowest(), start.highest());
                        int digit = draw.between(-9, 9);
                        value = worked(hand, value, rod, digit);
                    }

                    // A trace exists only if its strokes replay, one by one, on the frame.
                    Trace trace = hand.trace();
                    assertThat(trace.end().value()).isEqualByComparingTo(value);
                    assertThat(trace.end().rods()).allMatch(Rod::isPlain);
                    assertThat(trace.states()).hasSize(trace.steps().size() + 1);
                });
    }

    /// What the frame must read after `digit` on `rod`: the sum, or where the frame cannot show it
    /// what it read before.
    private static BigDecimal worked(Hand hand, BigDecimal value, int rod, int digit) {
        BigDecimal wanted = value.add(BigDecimal.valueOf(digit).scaleByPowerOfTen(rod));
        BigDecimal limit = BigDecimal.ONE.scaleByPowerOfTen(hand.frame().highest() + 1);
        boolean fits = wanted.signum() >= 0 && wanted.compareTo(limit) < 0;
        boolean done = true;
        try {
            if (digit < 0) {
                hand.take(rod, -digit, ENTRY);
            } else {
                hand.add(rod, digit, ENTRY);
            }
        } catch (Unworkable refused) {
            done = false;
        }
        BigDecimal expected = fits ? wanted : value;
        assertThat(done).as("%s %+d on rod %d", value, digit, rod).isEqualTo(fits);
        assertThat(hand.frame().value()).isEqualByComparingTo(expected);
        return expected;
    }

    private static Frame start(Draw draw) {
        int lowest = -draw.between(0, 3);
        int highest = lowest + draw.length(8);
        Frame frame = Frame.clear(draw.oneOf(List.of(FrameKind.values())), lowest, highest);
        for (int rod = lowest; rod <= highest; rod++) {
            frame = frame.with(rod, Rod.showing(draw.between(0, 9)));
        }
        return frame;
    }
}
