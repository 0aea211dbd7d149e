package tamabako.desk.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// Items of OWASP ASVS 5.0.0, V6.2 and V11.4.2.
class PasswordsTest {

    private final Passwords passwords = new Passwords();
    private final Strength strength = new Strength();

    private boolean isTaken(String password) {
        return strength.weakness(password, List.of("Mori Hana")).isEmpty();
    }

    @Test
    void aHashIsArgon2idWithNineteenMebibytesTwoPassesAndItsOwnSalt() {
        String first = passwords.hash("harbour kingfisher ladder");
        String second = passwords.hash("harbour kingfisher ladder");
        assertThat(first).startsWith("$argon2id$v=19$m=19456,t=2,p=1$").hasSizeGreaterThan(80);
        assertThat(second).isNotEqualTo(first);
        assertThat(passwords.matches("harbour kingfisher ladder", first)).isTrue();
        assertThat(passwords.matches("harbour kingfisher ladder", second)).isTrue();
    }

    @Test
    void aPasswordIsComparedExactlyAsItWasTyped() {
        String hash = passwords.hash(" Harbour Kingfisher ");
        for (String other : List.of("Harbour Kingfisher", " harbour kingfisher ", "", " ")) {
            assertThat(passwords.matches(other, hash)).as(other).isFalse();
        }
        String longOne = "harbour ".repeat(25);
        String longHash = passwords.hash(longOne + "a");
        assertThat(passwords.matches(longOne + "a", longHash)).isTrue();
        assertThat(passwords.matches(longOne + "b", longHash)).isFalse();
        assertThat(passwords.matches("そろばんと玉箱", passwords.hash("そろばんと玉箱"))).isTrue();
    }

    @Test
    void aHashMadeWithOtherSettingsStillCounts() {
        String older =
                com.password4j.Password.hash("harbour kingfisher ladder")
                        .addRandomSalt(16)
                        .with(
                                com.password4j.Argon2Function.getInstance(
                                        8_192, 3, 1, 32, com.password4j.types.Argon2.ID, 19))
                        .getResult();
        assertThat(passwords.matches("harbour kingfisher ladder", older)).isTrue();
        assertThat(passwords.matches("harbour kingfisher", older)).isFalse();
    }

    @Test
    void sevenSignsAreTooFewAndEightMayBeEnough() {
        assertThat(strength.weakness("vq7#kzp", List.of())).contains(Weakness.SHORT);
        assertThat(strength.weakness("vq7#kzpw", List.of())).isEmpty();
        assertThat(strength.weakness("𠮷野家の𠮷ですね", List.of()))
                .as("signs beyond the first plane count once")
                .isNotEqualTo(java.util.Optional.of(Weakness.SHORT));
        assertThat(strength.weakness("𠮷".repeat(7), List.of())).contains(Weakness.SHORT);
    }

    @Test
    void sixtyFourSignsAndMoreArePermitted() {
        String words = "harbour kingfisher ladder mitten orchard quiet saddle tunnel velvet ";
        assertThat(isTaken(words)).isTrue();
        assertThat(isTaken(words.repeat(3))).isTrue();
        assertThat(strength.weakness("x".repeat(257), List.of())).contains(Weakness.LONG);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "harbour kingfisher ladder",
                "harbourkingfisherladder",
                "HARBOUR KINGFISHER LADDER",
                "7391846205938471",
                "!?#%&/()=+*~<>|",
                "みかん と てぶくろ と でんしゃ",
                "ключ море лестница"
            })
    void signsOfAnyKindAloneMakeAPassword(String password) {
        assertThat(isTaken(password)).isTrue();
    }

    @Test
    void theThreeThousandCommonestPasswordsAreRefused() throws IOException {
        List<String> common = common();
        assertThat(common).hasSize(3_000);
        assertThat(common).allSatisfy(one -> assertThat(isTaken(one)).as(one).isFalse());
    }

    /// The commonest passwords of eight signs and more, from the list that comes with the estimate.
    private static List<String> common() throws IOException {
        String place = "/com/nulabinc/zxcvbn/matchers/dictionaries/passwords.txt";
        try (var file =
                        Objects.requireNonNull(
                                com.nulabinc.zxcvbn.Zxcvbn.class.getResourceAsStream(place));
                var reader =
                        new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            return reader.lines().filter(one -> one.length() >= 8).limit(3_000).toList();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "soroban2026", "tamabako1", "そろばんそろばん", "morihana1", "Mori Hana", "morimori1",
                "teacher1234", "assistant7", "qwertyuiop", "aaaaaaaaaaaa", "19840412", "abcdefgh12"
            })
    void wordsOfTheTradeOnesOwnNameRowsAndDatesAreRefused(String password) {
        assertThat(strength.weakness(password, List.of("Mori Hana"))).contains(Weakness.GUESSABLE);
    }
}
