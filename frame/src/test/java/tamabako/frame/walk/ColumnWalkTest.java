package tamabako.frame.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tamabako.frame.Technique.DIRECT;
import static tamabako.frame.Technique.FIVE_COMPLEMENT;
import static tamabako.frame.Technique.TEN_COMPLEMENT;
import static tamabako.frame.Technique.TEN_WITH_FIVE;
import static tamabako.testkit.Property.forSeeds;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.math.BigInteger;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import tamabako.frame.Technique;
import tamabako.frame.Unworkable;

class ColumnWalkTest {

    private final ColumnWalk walk = new ColumnWalk();

    @Test
    void aWalkCountsWhatIsCountedDigitByDigit() {
        forSeeds(
                600_000,
                draw -> {
                    List<BigInteger> rows = Rows.notBelowZero(draw);

                    walk.walk(Rows.packed(rows), rows.size());

                    Counts counts = DigitByDigit.work(rows);
                    if (!Counts.of(walk).equals(counts)) {
                        assertThat(Counts.of(walk)).as("%s", rows).isEqualTo(counts);
                    }
                });
    }

    /// The published numbers of cases. Source: rules of K. Tochio, Computation on the Soroban
    /// (1912), and Heffelfinger and Flom, Abacus: Mystery of the Bead.
    @Test
    void allNinetyCasesEachWayFallAsPublished() {
        Map<Technique, Integer> published =
                Map.of(DIRECT, 35, FIVE_COMPLEMENT, 10, TEN_COMPLEMENT, 35, TEN_WITH_FIVE, 10);

        assertThat(casesOf(1)).isEqualTo(published);
        assertThat(casesOf(-1)).isEqualTo(published);
    }

    /// Works every digit on every held one, with a ten beside it to borrow from.
    private Map<Technique, Integer> casesOf(int sign) {
        Map<Technique, Integer> cases = new EnumMap<>(Technique.class);
        for (int held = 0; held <= 9; held++) {
            for (int digit = 1; digit <= 9; digit++) {
                work(10 + held, sign < 0 ? -digit : digit);
                Tally tally = walk.tally();
                for (Technique technique : Technique.values()) {
                    cases.merge(technique, tally.count(technique), Integer::sum);
                }
                int besides = walk.settingSteps() + tally.carries() + tally.borrows();
                cases.merge(DIRECT, -besides, Integer::sum);
            }
        }
        return cases;
    }

    /// Source of the states 9731 9931 9991 9990 9900 9000 0000 10000: K. Tochio, Computation on the
    /// Soroban (1912). The strokes between them are counted by hand.
    @Test
    void aCarryRunsOnOverFullRods() {
        work(9731, 269);

        assertThat(walk.total()).isEqualTo(10_000);
        assertThat(walk.tally().steps() - walk.settingSteps()).isEqualTo(7);
        assertThat(walk.tally().carries()).isEqualTo(4);
        assertThat(walk.tally().count(TEN_COMPLEMENT)).isEqualTo(4);
        assertThat(walk.settingStrokes()).isEqualTo(2 + 2 + 1 + 1);
        assertThat(walk.tally().strokes() - walk.settingStrokes())
                .isEqualTo(1 + 2 + 1 + 2 + 2 + 2 + 1);
    }

    /// Source of the states 000 100 010 005 105 115 123 023: Heffelfinger and Flom, Abacus: Mystery
    /// of the Bead, negative numbers.
    @Test
    void aLoanIsTakenAndGivenBack() {
        work(0, -95);
        assertThat(walk.total()).isEqualTo(-95);
        assertThat(walk.wentBelowZero()).isTrue();
        assertThat(walk.tally().steps()).isEqualTo(5);

        walk.put(PackedNumber.pack(118));
        assertThat(walk.total()).isEqualTo(23);
        assertThat(walk.wentBelowZero()).isTrue();
        assertThat(walk.tally().borrows()).isEqualTo(2);

        work(1, 2);
        assertThat(walk.wentBelowZero()).isFalse();
    }

    @Test
    void theTechniquesInUseAreToldFromThoseAllowed() {
        work(12, 5, 21);
        assertThat(walk.tally().isWithin(EnumSet.of(DIRECT))).isTrue();

        work(3, 4);
        assertThat(walk.tally().isWithin(EnumSet.of(DIRECT))).isFalse();
        assertThat(walk.tally().isWithin(EnumSet.of(DIRECT, FIVE_COMPLEMENT))).isTrue();
        assertThat(walk.tally().used()).isEqualTo(0b0011);

        work(8, 6, -5);
        assertThat(walk.tally().used()).isEqualTo(0b1101);
        assertThat(Tally.bits(EnumSet.of(DIRECT, TEN_COMPLEMENT, TEN_WITH_FIVE))).isEqualTo(0b1101);
    }

    @Test
    void walkingAndNotingMakeNoObject() {
        PackedTrace trace = new PackedTrace();
        long[] column = LongStream.of(3782, -95, 268, -4999).map(PackedNumber::pack).toArray();
        ThreadMXBean thread = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long seen = 0;
        long least = Long.MAX_VALUE;
        // The machine itself makes an object now and then, while it loads and compiles; objects of
        // the walk would be there in every round.
        for (int round = 0; round < 5; round++) {
            long before = thread.getCurrentThreadAllocatedBytes();
            for (int i = 0; i < 2_000; i++) {
                walk.walk(column, column.length);
                trace.work(column, column.length);
                seen += walk.total() + walk.tally().count(DIRECT);
                seen += walk.tally().used() + trace.size();
            }
            least = Math.min(least, thread.getCurrentThreadAllocatedBytes() - before);
        }
        assertThat(seen).isNotZero();
        assertThat(least).isZero();
    }

    /// A carry alone can need the five: 45 + 7 takes three from the 5 with the upper bead, and
    /// makes five of the four tens.
    @Test
    void aCarryHasATechniqueToo() {
        work(45, 7);

        assertThat(walk.tally().count(TEN_WITH_FIVE)).isEqualTo(1);
        assertThat(walk.tally().count(FIVE_COMPLEMENT)).isEqualTo(1);
        assertThat(walk.tally().count(DIRECT)).isEqualTo(walk.settingSteps());
    }

    @Test
    void aTotalForWhichThereIsNoRodIsRefused() {
        long most = PackedNumber.pack(999_999_999_999_999L);
        long[] eleven = LongStream.generate(() -> most).limit(11).toArray();

        walk.walk(eleven, 10);
        assertThat(walk.total()).isEqualTo(9_999_999_999_999_990L);
        assertThatThrownBy(() -> walk.walk(eleven, 11))
                .isInstanceOf(Unworkable.class)
                .hasMessageContaining("needs 17 rods, and the frame has 16");
    }

    @Test
    void aDebtForWhichThereIsNoRodIsRefused() {
        work(-999_999_999_999_999L);
        assertThat(walk.total()).isEqualTo(-999_999_999_999_999L);

        assertThatThrownBy(() -> walk.put(PackedNumber.pack(-2)))
                .isInstanceOf(Unworkable.class)
                .hasMessageContaining("needs 17 rods, and the frame has 16");
    }

    @Test
    void aWalkWithoutRoomForItsDecimalsIsRefused() {
        assertThatThrownBy(() -> new ColumnWalk(15)).hasMessageContaining("0 to 14 decimals");
        assertThatThrownBy(() -> new ColumnWalk(-1)).hasMessageContaining("0 to 14 decimals");
    }

    private void work(long... rows) {
        walk.walk(LongStream.of(rows).map(PackedNumber::pack).toArray(), rows.length);
    }
}
