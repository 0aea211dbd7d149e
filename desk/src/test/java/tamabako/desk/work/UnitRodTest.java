package tamabako.desk.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import tamabako.frame.Frame;
import tamabako.frame.FrameKind;

class UnitRodTest {

    @Test
    void everyRodIsReadByItsLetterAndByItsNumber() {
        for (int rod = 1; rod <= Frame.MOST_RODS; rod++) {
            UnitRod unit = new UnitRod(rod);
            assertThat(UnitRod.parse(unit.letter())).contains(unit);
            assertThat(UnitRod.parse(" " + rod)).contains(unit);
        }
        assertThat(UnitRod.parse("h")).contains(new UnitRod(8));
        assertThat(new UnitRod(26).letter()).isEqualTo("Z");
        assertThat(new UnitRod(27).letter()).isEqualTo("27");
    }

    @Test
    void whatIsNoRodIsRefused() {
        for (String written : new String[] {"", "0", "32", "AA", "-1", "Ω", "８"}) {
            assertThat(UnitRod.parse(written)).as(written).isEmpty();
        }
        assertThatThrownBy(() -> new UnitRod(0)).hasMessageContaining("not 0");
        assertThatThrownBy(() -> new UnitRod(32)).hasMessageContaining("not 32");
    }

    @Test
    void theUnitRodOfAFrameHasTheTenthsAtItsRight() {
        assertThat(UnitRod.of(Frame.clear(FrameKind.MODERN, -1, 7))).isEqualTo(new UnitRod(8));
    }
}
