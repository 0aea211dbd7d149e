package tamabako.desk.account;

import com.nulabinc.zxcvbn.Zxcvbn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// Says what is too easy to guess to be a password.
///
/// Any signs may stand in it and none must. What counts is how many tries a guesser needs who knows
/// common passwords, words, names, dates and rows of keys: at least a hundred million. Source of
/// the estimate: D. Wheeler, "zxcvbn: Low-Budget Password Strength Estimation", 2016.
final class Strength {

    /// The fewest signs. OWASP ASVS 5.0.0, V6.2.1.
    static final int SHORTEST = 8;

    /// The most signs; OWASP ASVS 5.0.0, V6.2.9, wants 64 or more.
    static final int LONGEST = 256;

    /// So many tries make a guesser give up who is slowed down as [Throttle] does.
    private static final double ENOUGH = 1e8;

    /// So many signs are looked at: the estimate takes long for long ones, and so many signs that
    /// are hard to guess are enough.
    private static final int LOOKED_AT = 64;

    /// Words of this program and its trade, which its guesser tries first.
    private static final List<String> OUR_WORDS =
            List.of(
                    "tamabako",
                    "玉箱",
                    "たまばこ",
                    "soroban",
                    "そろばん",
                    "算盤",
                    "珠算",
                    "abacus",
                    "teacher",
                    "owner",
                    "assistant",
                    "school",
                    "先生",
                    "教室",
                    "塾");

    private final Zxcvbn guesser = new Zxcvbn();

    /// Why `password` cannot be taken, or empty where it can.
    ///
    /// @param own what is known of whose it will be, such as their name
    Optional<Weakness> weakness(String password, List<String> own) {
        int signs = password.codePointCount(0, password.length());
        if (signs < SHORTEST) {
            return Optional.of(Weakness.SHORT);
        }
        if (signs > LONGEST) {
            return Optional.of(Weakness.LONG);
        }
        List<String> known = new ArrayList<>(OUR_WORDS);
        for (String word : own) {
            known.add(word);
            known.addAll(List.of(word.split("\\s+")));
        }
        known.removeIf(String::isBlank);
        String start =
                password.substring(0, password.offsetByCodePoints(0, Math.min(signs, LOOKED_AT)));
        return guesser.measure(start, known).getGuesses() < ENOUGH
                ? Optional.of(Weakness.GUESSABLE)
                : Optional.empty();
    }
}
