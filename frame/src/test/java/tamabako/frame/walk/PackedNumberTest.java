package tamabako.frame.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import tamabako.frame.Figures;
import tamabako.frame.Unworkable;

class PackedNumberTest {

    @Test
    void packedAndUnpackedANumberIsItself() {
        forSeeds(
                100_000,
                draw -> {
                    BigDecimal number = draw.decimal(draw.length(15), draw.between(0, 3));
                    BigDecimal signed = draw.chance(1, 2) ? number.negate() : number;

                    long packed = PackedNumber.pack(signed, number.scale());

                    assertThat(PackedNumber.unpack(packed))
                            .isEqualTo(signed.unscaledValue().longValueExact());
                    assertThat(PackedNumber.pack(PackedNumber.unpack(packed))).isEqualTo(packed);
                    assertThat(PackedNumber.isMinus(packed)).isEqualTo(signed.signum() < 0);
                    assertThat(PackedNumber.digits(packed)).isEqualTo(number.precision());
                    assertThat(PackedNumber.unpack(PackedNumber.negate(packed)))
                            .isEqualTo(-PackedNumber.unpack(packed));
                });
    }

    @Test
    void everyDigitCanBeReadAndChanged() {
        forSeeds(
                20_000,
                draw -> {
                    BigDecimal number = new BigDecimal(draw.whole(draw.length(15)));
                    int rod = draw.between(0, 14);
                    int digit = draw.between(0, 9);
                    long packed = PackedNumber.pack(number.negate(), 0);

                    long changed = PackedNumber.withDigit(packed, rod, digit);

                    assertThat(PackedNumber.digit(packed, rod))
                            .isEqualTo(Figures.digitAt(number, rod));
                    assertThat(PackedNumber.digit(changed, rod)).isEqualTo(digit);
                    assertThat(PackedNumber.withDigit(changed, rod, Figures.digitAt(number, rod)))
                            .isEqualTo(packed);
                });
    }

    @Test
    void zeroHasNoDigitsAndNoSign() {
        assertThat(PackedNumber.pack(0)).isZero();
        assertThat(PackedNumber.negate(0)).isZero();
        assertThat(PackedNumber.digits(0)).isZero();
        assertThat(PackedNumber.pack(new BigDecimal("-0.00"), 2)).isZero();
    }

    @Test
    void decimalsAreCountedInUnitsOfTheLastPlace() {
        assertThat(PackedNumber.pack(new BigDecimal("8.9"), 1)).isEqualTo(PackedNumber.pack(89));
        assertThat(PackedNumber.pack(new BigDecimal("-8.9"), 3))
                .isEqualTo(PackedNumber.pack(-8900));
        assertThat(PackedNumber.pack(new BigDecimal("4E3"), 0)).isEqualTo(PackedNumber.pack(4000));
        assertThatThrownBy(() -> PackedNumber.pack(new BigDecimal("8.95"), 1))
                .isInstanceOf(ArithmeticException.class);
    }

    @Test
    void moreThanFifteenDigitsAreRefused() {
        assertRefused(() -> PackedNumber.pack(1_000_000_000_000_000L));
        assertRefused(() -> PackedNumber.pack(-1_000_000_000_000_000L));
        assertRefused(() -> PackedNumber.pack(new BigDecimal("123456789012345.6"), 1));
        assertThatThrownBy(() -> PackedNumber.pack(Long.MIN_VALUE))
                .hasMessageContaining("needs 19 rods to be worked, and the frame has 15");
    }

    private static void assertRefused(Runnable packing) {
        assertThatThrownBy(packing::run)
                .isInstanceOf(Unworkable.class)
                .hasMessageContaining("needs 16 rods to be worked, and the frame has 15");
    }
}
