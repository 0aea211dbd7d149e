package tamabako.problems.making.column;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import org.junit.jupiter.api.Test;

/// Packed digits against the figures of the same number.
class DigitsTest {

    @Test
    void digitsAreThoseOfTheNumber() {
        forSeeds(
                2000,
                draw -> {
                    String figures = draw.whole(draw.length(16)).toString();
                    long size = Digits.pack(Long.parseLong(figures));
                    int place = draw.between(0, figures.length() - 1);
                    int at = figures.length() - 1 - place;
                    int digit = draw.between(0, 9);

                    assertThat(Digits.number(size)).isEqualTo(Long.parseLong(figures));
                    assertThat(Digits.length(size)).isEqualTo(figures.length());
                    assertThat(Digits.digit(size, place)).isEqualTo(figures.charAt(at) - '0');
                    assertThat(Digits.lead(size)).isEqualTo(figures.charAt(0) - '0');
                    String other = figures.substring(0, at) + digit + figures.substring(at + 1);
                    assertThat(Digits.number(Digits.with(size, place, digit)))
                            .isEqualTo(Long.parseLong(other));
                    if (figures.length() < 16) {
                        String longer =
                                figures.substring(0, at + 1) + digit + figures.substring(at + 1);
                        assertThat(Digits.number(Digits.inserted(size, place, digit)))
                                .isEqualTo(Long.parseLong(longer));
                    }
                    String shorter = "0" + figures.substring(0, at) + figures.substring(at + 1);
                    assertThat(Digits.number(Digits.removed(size, place)))
                            .isEqualTo(Long.parseLong(shorter));
                });
    }

    @Test
    void placesWithTheSameDigitAreFound() {
        forSeeds(
                2000,
                draw -> {
                    long one = draw.whole(draw.length(16)).longValueExact();
                    long other = draw.whole(draw.length(16)).longValueExact();
                    long same = 0;
                    long restOfOne = one;
                    long restOfOther = other;
                    for (int place = 0; restOfOne > 0 && restOfOther > 0; place++) {
                        if (restOfOne % 10 == restOfOther % 10) {
                            same |= 8L << (4 * place);
                        }
                        restOfOne /= 10;
                        restOfOther /= 10;
                    }

                    assertThat(Digits.sames(Digits.pack(one), Digits.pack(other))).isEqualTo(same);
                });
    }

    @Test
    void rowsOfOneDigitAndRowsThatCountAreKnown() {
        for (long number = 1; number < 100_000; number++) {
            String figures = Long.toString(number);
            boolean one = figures.length() > 1 && figures.chars().distinct().count() == 1;
            boolean counts =
                    figures.length() > 2
                            && ("0123456789".contains(figures) || "9876543210".contains(figures));
            assertThat(Digits.isOneDigit(Digits.pack(number))).as(figures).isEqualTo(one);
            assertThat(Digits.counts(Digits.pack(number))).as(figures).isEqualTo(counts);
        }
    }
}
