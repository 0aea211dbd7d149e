package tamabako.desk.account;

import java.security.SecureRandom;
import java.text.Normalizer;
import java.time.Duration;
import java.util.Locale;

/// A code that the desk makes and a person types once, such as `K7QM-29XF-3HBD`: about 58 bits.
///
/// It has no sign that is mistaken for another.
final class OneTimeCode {

    /// How long a new account waits for its first password.
    static final Duration COUNTS = Duration.ofDays(3);

    private static final String LETTERS = "23456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final SecureRandom CHANCE = new SecureRandom();
    private static final int GROUPS = 3;
    private static final int IN_A_GROUP = 4;

    private OneTimeCode() {}

    /// Another one.
    static String fresh() {
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < GROUPS * IN_A_GROUP; i++) {
            if (i > 0 && i % IN_A_GROUP == 0) {
                code.append('-');
            }
            code.append(LETTERS.charAt(CHANCE.nextInt(LETTERS.length())));
        }
        return code.toString();
    }

    /// A code as someone may type it, written as [#fresh] writes it: blanks, hyphens, small letters
    /// and full width make no difference.
    static String tidy(String typed) {
        String plain =
                Normalizer.normalize(typed, Normalizer.Form.NFKC)
                        .toUpperCase(Locale.ROOT)
                        .replaceAll("[^0-9A-Z]", "");
        return plain.replaceAll("(.{4})(?=.)", "$1-");
    }
}
