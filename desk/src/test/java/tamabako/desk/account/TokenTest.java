package tamabako.desk.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Base64;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/// Items V6.4.1, V6.5.3, V6.5.4, V7.2.2, V7.2.3 and V11.5.1 of OWASP ASVS 5.0.0.
class TokenTest {

    @Test
    void aTokenHas256BitsAndNoTwoAreAlike() {
        Set<String> seen = new HashSet<>();
        int[] ones = new int[256];
        for (int i = 0; i < 2_000; i++) {
            Token token = Token.fresh();
            byte[] bytes = Base64.getUrlDecoder().decode(token.text());
            assertThat(bytes).hasSize(32);
            assertThat(seen.add(token.text())).isTrue();
            for (int bit = 0; bit < 256; bit++) {
                ones[bit] += bytes[bit / 8] >> (bit % 8) & 1;
            }
        }
        // 2,000 throws of a coin leave this span by chance once in 10^12.
        assertThat(Arrays.stream(ones)).allMatch(count -> count > 840 && count < 1_160);
    }

    @Test
    void onlyItsDigestIsKeptAndItIsNoText() {
        Token token = new Token("abc");
        // FIPS 180-2, appendix B.1
        assertThat(token.digest())
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(token.toString()).doesNotContain("abc");
    }

    @Test
    void aCodeIsDrawnAnewAndReadHoweverItIsTyped() {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < 2_000; i++) {
            String code = OneTimeCode.fresh();
            assertThat(code).matches("([2-9A-HJKMNP-TV-Z]{4}-){2}[2-9A-HJKMNP-TV-Z]{4}");
            assertThat(seen.add(code)).isTrue();
            assertThat(OneTimeCode.tidy(code)).isEqualTo(code);
        }
        assertThat(OneTimeCode.tidy(" k7qm 29xf-3hbd ")).isEqualTo("K7QM-29XF-3HBD");
        assertThat(OneTimeCode.tidy("Ｋ７ＱＭ２９ＸＦ３ＨＢＤ")).isEqualTo("K7QM-29XF-3HBD");
        assertThat(OneTimeCode.tidy("")).isEmpty();
    }
}
