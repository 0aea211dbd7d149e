package tamabako.desk.room;

import java.security.SecureRandom;
import java.text.Normalizer;
import java.util.Locale;

/// The code that pupils type to join a room: six figures and capitals, none of which is mistaken
/// for another. There are 729,000,000 of them.
public final class JoinCode {

    /// How many letters it has.
    public static final int LENGTH = 6;

    private static final String LETTERS = "23456789ABCDEFGHJKMNPQRSTVWXYZ";

    private static final SecureRandom RANDOM = new SecureRandom();

    private JoinCode() {}

    /// A code drawn by chance.
    public static String fresh() {
        StringBuilder code = new StringBuilder(LENGTH);
        for (int i = 0; i < LENGTH; i++) {
            code.append(LETTERS.charAt(RANDOM.nextInt(LETTERS.length())));
        }
        return code.toString();
    }

    /// What was typed, as a code is written: small letters, full-width letters, blanks and hyphens
    /// are all right.
    public static String clean(String typed) {
        return Normalizer.normalize(typed, Normalizer.Form.NFKC)
                .toUpperCase(Locale.ROOT)
                .replaceAll("[\\s-]", "");
    }
}
