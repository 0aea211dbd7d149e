package tamabako.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.BiFunction;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// The ninety cases each way, letter for letter.
///
/// Source: the rules of K. Tochio, Computation on the Soroban (1912), Addition and Subtraction, and
/// of Heffelfinger and Flom, Abacus: Mystery of the Bead, written out by hand for every pair. D
/// direct, F five-complement, T ten-complement, M ten with five.
class TechniqueTest {

    /// Held digit down the side, the digit added from 1 to 9 across.
    private static final String ADDING =
            """
            0 D D D D D D D D D
            1 D D D F D D D D T
            2 D D F F D D D T T
            3 D F F F D D T T T
            4 F F F F D T T T T
            5 D D D D T M M M M
            6 D D D T T M M M T
            7 D D T T T M M T T
            8 D T T T T M T T T
            9 T T T T T T T T T
            """;

    /// Held digit down the side, the digit taken from 1 to 9 across.
    private static final String TAKING =
            """
            0 T T T T T T T T T
            1 D T T T T M T T T
            2 D D T T T M M T T
            3 D D D T T M M M T
            4 D D D D T M M M M
            5 F F F F D T T T T
            6 D F F F D D T T T
            7 D D F F D D D T T
            8 D D D F D D D D T
            9 D D D D D D D D D
            """;

    @Test
    void everyAdditionIsDoneAsTheTableSays() {
        assertTable(ADDING, Technique::ofAdding);
    }

    @Test
    void everyTakingIsDoneAsTheTableSays() {
        assertTable(TAKING, Technique::ofTaking);
    }

    @Test
    void aPlainRodIsWorkedAsItsDigit() {
        assertTable(ADDING, (held, digit) -> Technique.ofAdding(Rod.showing(held), digit));
        assertTable(TAKING, (held, digit) -> Technique.ofTaking(Rod.showing(held), digit));
    }

    @Test
    void eachTableHas35DirectAnd10FiveAnd35TenAnd10TenWithFive() {
        assertThat(counts(Technique::ofAdding))
                .isEqualTo(counts(Technique::ofTaking))
                .isEqualTo(
                        Map.of(
                                Technique.DIRECT, 35,
                                Technique.FIVE_COMPLEMENT, 10,
                                Technique.TEN_COMPLEMENT, 35,
                                Technique.TEN_WITH_FIVE, 10));
    }

    @ParameterizedTest
    @CsvSource({"6, 5-8, 1-4", "7, 5-7, 2-4", "8, 5-6, 3-4", "9, 5-5, 4-4"})
    void tenWithFiveIsNeededOnTheseDigitsOnly(int digit, String whenAdding, String whenTaking) {
        for (int held = 0; held <= 9; held++) {
            assertThat(Technique.ofAdding(held, digit) == Technique.TEN_WITH_FIVE)
                    .as("%d + %d", held, digit)
                    .isEqualTo(isIn(whenAdding, held));
            assertThat(Technique.ofTaking(held, digit) == Technique.TEN_WITH_FIVE)
                    .as("%d - %d", held, digit)
                    .isEqualTo(isIn(whenTaking, held));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "-1, 3, 'holds 0 to 9, not -1'",
        "10, 3, 'holds 0 to 9, not 10'",
        "3, 0, '1 to 9 is added or taken, not 0'",
        "3, 10, '1 to 9 is added or taken, not 10'"
    })
    void thereIsNoCaseOutsideTheTable(int held, int digit, String because) {
        assertRefused(() -> Technique.ofAdding(held, digit), because);
        assertRefused(() -> Technique.ofTaking(held, digit), because);
    }

    @ParameterizedTest
    @CsvSource({"0", "10"})
    void noRodIsWorkedWithAnythingButADigit(int digit) {
        assertRefused(() -> Technique.ofAdding(Rod.CLEAR, digit), "not " + digit);
        assertRefused(() -> Technique.ofTaking(Rod.CLEAR, digit), "not " + digit);
    }

    @ParameterizedTest
    @CsvSource({
        "DIRECT, false, direct",
        "FIVE_COMPLEMENT, false, five-complement",
        "TEN_COMPLEMENT, true, ten-complement",
        "TEN_WITH_FIVE, true, ten-with-five"
    })
    void eachHasItsWord(Technique technique, boolean passesTen, String word) {
        assertThat(technique.passesTen()).isEqualTo(passesTen);
        assertThat(technique.word()).isEqualTo(word);
    }

    private static void assertRefused(ThrowingCallable asked, String because) {
        assertThatThrownBy(asked)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(because);
    }

    private static void assertTable(String table, BiFunction<Integer, Integer, Technique> rule) {
        StringBuilder actual = new StringBuilder();
        for (int held = 0; held <= 9; held++) {
            actual.append(held);
            for (int digit = 1; digit <= 9; digit++) {
                actual.append(' ').append(letter(rule.apply(held, digit)));
            }
            actual.append('\n');
        }
        assertThat(actual.toString()).isEqualTo(table);
    }

    private static char letter(Technique technique) {
        return switch (technique) {
            case DIRECT -> 'D';
            case FIVE_COMPLEMENT -> 'F';
            case TEN_COMPLEMENT -> 'T';
            case TEN_WITH_FIVE -> 'M';
        };
    }

    private static Map<Technique, Integer> counts(BiFunction<Integer, Integer, Technique> rule) {
        Map<Technique, Integer> counts = new EnumMap<>(Technique.class);
        for (int held = 0; held <= 9; held++) {
            for (int digit = 1; digit <= 9; digit++) {
                counts.merge(rule.apply(held, digit), 1, Integer::sum);
            }
        }
        return counts;
    }

    private static boolean isIn(String range, int held) {
        return held >= range.charAt(0) - '0' && held <= range.charAt(2) - '0';
    }
}
