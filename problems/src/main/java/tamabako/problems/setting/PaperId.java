package tamabako.problems.setting;

import java.util.Locale;
import java.util.function.LongSupplier;
import tamabako.problems.HalfWidth;
import tamabako.problems.words.Sayable;

/// The opaque name of a paper: eleven characters of pure chance and one that checks them, shown in
/// fours as `7KMX-2P9T-HC4R`.
///
/// It is drawn, never worked out from a seed, so nothing about the paper or its key can be told
/// from it, and no other paper's name can be guessed: there are 23 to the 11th, about 9.5e14. The
/// characters have no vowels, so that no words come about, and of look-alikes (0 and O, 1, I and L,
/// 2 and Z, 5 and S, 6 and G, 8 and B, U and V, 9 and Q) one at most.
///
/// The check character makes the sum of all characters, weighted 1 to 12, a multiple of 23. As 23
/// is prime, every single wrong character and every swap of two is noticed.
public final class PaperId {

    private static final String CHARACTERS = "23456789CDFHJKMNPRTVWXY";
    private static final int FREE = 11;
    private static final int LENGTH = FREE + 1;
    private static final int GROUP = 4;

    /// Bits drawn for one character, and how often 64 bits hold them.
    private static final int CHUNK = 5;

    private static final int CHUNKS = Long.SIZE / CHUNK;

    private final String code;

    private PaperId(String code) {
        this.code = code;
    }

    /// What came of reading a written name.
    public sealed interface Read {

        /// A name that checks.
        record Known(PaperId id) implements Read {}

        /// What is written is no name of a paper.
        record Unknown(Reason reason) implements Read {}
    }

    /// Why what is written is no name of a paper.
    public sealed interface Reason extends Sayable {

        @Override
        default String topic() {
            return "paper-id";
        }

        /// A character that no name has.
        ///
        /// @param position where it stands, from 1, blanks and hyphens not counted
        record NoSuchCharacter(String shown, String character, int position) implements Reason {}

        /// Too few or too many characters.
        record OtherLength(String shown, int length, int expected) implements Reason {}

        /// All characters are possible, and one is wrong or two are swapped.
        record CheckFails(String shown) implements Reason {}
    }

    /// A new name from `secureBits`, which must give 64 unpredictable bits a call, as a
    /// cryptographic source does; each name is equally likely.
    public static PaperId draw(LongSupplier secureBits) {
        StringBuilder drawn = new StringBuilder(LENGTH);
        while (true) {
            long bits = secureBits.getAsLong();
            for (int i = 0; i < CHUNKS; i++, bits >>>= CHUNK) {
                int value = (int) bits & ((1 << CHUNK) - 1);
                if (value < CHARACTERS.length()) {
                    drawn.append(CHARACTERS.charAt(value));
                }
                if (drawn.length() == FREE) {
                    return new PaperId(drawn.append(check(drawn)).toString());
                }
            }
        }
    }

    /// Reads a name as people write it: small or capital letters, full-width ones too, with blanks
    /// and hyphens anywhere.
    public static Read read(String written) {
        String shown = written.strip();
        String plain = HalfWidth.of(written).replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
        for (int i = 0; i < plain.length(); i++) {
            if (CHARACTERS.indexOf(plain.charAt(i)) < 0) {
                String character = Character.toString(plain.codePointAt(i));
                return new Read.Unknown(new Reason.NoSuchCharacter(shown, character, i + 1));
            }
        }
        if (plain.length() != LENGTH) {
            return new Read.Unknown(new Reason.OtherLength(shown, plain.length(), LENGTH));
        }
        return sum(plain) == 0
                ? new Read.Known(new PaperId(plain))
                : new Read.Unknown(new Reason.CheckFails(shown));
    }

    /// The twelve characters, without hyphens.
    public String code() {
        return code;
    }

    /// As it is printed, in fours: `7KMX-2P9T-HC4R`.
    @Override
    public String toString() {
        return "%s-%s-%s"
                .formatted(
                        code.substring(0, GROUP),
                        code.substring(GROUP, 2 * GROUP),
                        code.substring(2 * GROUP));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PaperId id && id.code.equals(code);
    }

    @Override
    public int hashCode() {
        return code.hashCode();
    }

    /// The character that makes the weighted sum a multiple of 23: 12 times 2 is 1 beyond one.
    private static char check(CharSequence free) {
        int value = (2 * (CHARACTERS.length() - sum(free))) % CHARACTERS.length();
        return CHARACTERS.charAt(value);
    }

    private static int sum(CharSequence characters) {
        int sum = 0;
        for (int i = 0; i < characters.length(); i++) {
            sum += (i + 1) * CHARACTERS.indexOf(characters.charAt(i));
        }
        return sum % CHARACTERS.length();
    }
}
