package tamabako.records;

import java.security.SecureRandom;

/// Makes opaque identities: they tell nothing about what they stand for and cannot be guessed.
public final class Identity {

    /// Digits and capitals without those that are mistaken for each other.
    private static final String LETTERS = "23456789ABCDEFGHJKMNPQRSTVWXYZ";

    private static final SecureRandom RANDOM = new SecureRandom();

    private Identity() {}

    /// An identity of 26 letters, about 127 bits.
    public static String fresh() {
        return letters(26);
    }

    /// A short identity that people can read out from a printed sheet, such as `K7QM-29XF`: about
    /// 39 bits, and so no secret.
    public static String readable() {
        return letters(4) + "-" + letters(4);
    }

    private static String letters(int count) {
        StringBuilder letters = new StringBuilder(count);
        for (int i = 0; i < count; i++) {
            letters.append(LETTERS.charAt(RANDOM.nextInt(LETTERS.length())));
        }
        return letters.toString();
    }
}
