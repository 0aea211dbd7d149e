package tamabako.records;

import java.text.Normalizer;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/// That a teacher or an assistant may sign in, and with what.
///
/// @param teacherId whose account it is
/// @param name the name typed to sign in, as [#folded] writes it
/// @param secret the argon2id hash of the password, or of a one-time code
/// @param codeUntil where `secret` is a one-time code: until when it counts
/// @param disabled whether it is shut
public record Account(
        String teacherId,
        String name,
        String secret,
        Optional<Instant> codeUntil,
        boolean disabled) {

    /// An account with a password.
    public static Account withPassword(Teacher teacher, String hash) {
        return new Account(teacher.id(), folded(teacher.name()), hash, Optional.empty(), false);
    }

    /// An account that waits for its first password, which the one-time code lets choose.
    public static Account withCode(Teacher teacher, String hash, Instant until) {
        return new Account(teacher.id(), folded(teacher.name()), hash, Optional.of(until), false);
    }

    /// The same account with this password; a one-time code is used up by it.
    public Account with(String hash) {
        return new Account(teacherId, name, hash, Optional.empty(), disabled);
    }

    /// The same account with a one-time code in place of its password.
    public Account with(String codeHash, Instant until) {
        return new Account(teacherId, name, codeHash, Optional.of(until), disabled);
    }

    /// The same account, shut or open.
    public Account disabled(boolean shut) {
        return new Account(teacherId, name, secret, codeUntil, shut);
    }

    /// A name as it is compared: full and half width, capitals and small letters, and blanks more
    /// than one make no difference.
    public static String folded(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFKC)
                .strip()
                .replaceAll("\\s+", " ")
                .toLowerCase(Locale.ROOT);
    }
}
