package tamabako.desk.account;

import com.password4j.Argon2Function;
import com.password4j.Password;
import com.password4j.types.Argon2;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;

/// Hashes passwords and one-time codes, and compares them with their hashes.
///
/// Argon2id with 19 MiB, two passes and one lane, the first choice of the OWASP Password Storage
/// Cheat Sheet. A hash carries its own settings, so those that were made with others still count.
final class Passwords {

    private static final int MEMORY_KIB = 19_456;
    private static final int PASSES = 2;
    private static final int LANES = 1;
    private static final int HASH_BYTES = 32;
    private static final int SALT_BYTES = 16;
    private static final int VERSION = 19;

    private static final Argon2Function ARGON2ID =
            Argon2Function.getInstance(MEMORY_KIB, PASSES, LANES, HASH_BYTES, Argon2.ID, VERSION);

    /// So many are hashed at once and no more: each takes 19 MiB and a core for a while.
    private final Semaphore places = new Semaphore(2, true);

    /// What a password is compared with where there is no account, so that it takes as long.
    private final String nobody = hash(Token.fresh().text());

    /// The hash to keep.
    String hash(String password) {
        return slowly(
                () -> Password.hash(password).addRandomSalt(SALT_BYTES).with(ARGON2ID).getResult());
    }

    /// Whether that password has that hash.
    boolean matches(String password, String hash) {
        return slowly(() ->
                Password.check(password, hash).with(Argon2Function.getInstanceFromHash(hash)));
    }

    /// Compares with nothing, for as long as comparing takes.
    void compareWithNobody(String password) {
        matches(password, nobody);
    }

    private <T> T slowly(Supplier<T> work) {
        places.acquireUninterruptibly();
        try {
            return work.get();
        } finally {
            places.release();
        }
    }
}
