package tamabako.problems.setting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tamabako.problems.setting.PaperId.Read;
import tamabako.testkit.Property;

class PaperIdTest {

    private static final String CHARACTERS = "23456789CDFHJKMNPRTVWXY";

    @Test
    void whatIsPrintedIsReadAgainInAnyCaseAndWithAnyBlanks() {
        Property.forSeeds(
                2_000,
                draw -> {
                    PaperId id = PaperId.draw(draw::bits);
                    String typed = id.toString().toLowerCase(Locale.ROOT).replace("-", " - ");

                    assertThat(id.toString())
                            .matches("[%1$s]{4}-[%1$s]{4}-[%1$s]{4}".formatted(CHARACTERS));
                    assertThat(PaperId.read(id.toString())).isEqualTo(new Read.Known(id));
                    assertThat(PaperId.read("  " + typed + " ")).isEqualTo(new Read.Known(id));
                    assertThat(PaperId.read(id.code())).isEqualTo(new Read.Known(id));
                });
    }

    @Test
    void everyWrongCharacterIsNoticed() {
        Property.forSeeds(
                50,
                draw -> {
                    String code = PaperId.draw(draw::bits).code();
                    for (int i = 0; i < code.length(); i++) {
                        for (int c = 0; c < CHARACTERS.length(); c++) {
                            char other = CHARACTERS.charAt(c);
                            String typed = code.substring(0, i) + other + code.substring(i + 1);
                            assertThat(PaperId.read(typed) instanceof Read.Known)
                                    .as(typed)
                                    .isEqualTo(typed.equals(code));
                        }
                    }
                });
    }

    @Test
    void everySwapOfTwoCharactersIsNoticed() {
        Property.forSeeds(
                100,
                draw -> {
                    String code = PaperId.draw(draw::bits).code();
                    for (int i = 0; i < code.length(); i++) {
                        for (int j = i + 1; j < code.length(); j++) {
                            StringBuilder typed = new StringBuilder(code);
                            typed.setCharAt(i, code.charAt(j));
                            typed.setCharAt(j, code.charAt(i));
                            assertThat(PaperId.read(typed.toString()) instanceof Read.Known)
                                    .as(typed.toString())
                                    .isEqualTo(code.charAt(i) == code.charAt(j));
                        }
                    }
                });
    }

    @Test
    void whatIsWrongIsTold() {
        PaperId id = PaperId.draw(() -> 0x0123456789ABCDEFL);
        String code = id.code();
        String wrong = code.substring(0, 11) + (code.endsWith("2") ? '3' : '2');

        assertThat(PaperId.read("O" + code.substring(1)))
                .isEqualTo(
                        new Read.Unknown(
                                new PaperId.Reason.NoSuchCharacter(
                                        "O" + code.substring(1), "O", 1)));
        assertThat(PaperId.read(code.substring(1)))
                .isEqualTo(
                        new Read.Unknown(
                                new PaperId.Reason.OtherLength(code.substring(1), 11, 12)));
        assertThat(PaperId.read(wrong))
                .isEqualTo(new Read.Unknown(new PaperId.Reason.CheckFails(wrong)));
    }

    @Test
    void everyCharacterIsDrawnEquallyOftenAndNoNameTwice() {
        Set<PaperId> seen = new HashSet<>();
        int[] counts = new int[128];
        Property.forSeeds(
                10_000,
                draw -> {
                    PaperId id = PaperId.draw(draw::bits);
                    assertThat(seen.add(id)).isTrue();
                    id.code().substring(0, 11).chars().forEach(character -> counts[character]++);
                });

        double expected = 110_000.0 / CHARACTERS.length();
        double chiSquare =
                CHARACTERS
                        .chars()
                        .mapToDouble(c -> Math.pow(counts[c] - expected, 2) / expected)
                        .sum();
        // 22 degrees of freedom: above 48.3 once in a thousand.
        assertThat(chiSquare).isLessThan(48.3);
    }
}
