package tamabako.desk.account;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tamabako.desk.web.Caller;
import tamabako.records.Account;
import tamabako.records.ClassBook;
import tamabako.records.Identity;
import tamabako.records.SignIn;
import tamabako.records.Teacher;

/// Compares names and passwords, and begins and ends sign-ins.
///
/// A name that nobody has takes as long, and is answered in the same way, as one that somebody has.
final class SigningIn {

    /// A sign-in ends when its browser was not seen for so long: a teaching day.
    static final Duration IDLE = Duration.ofHours(12);

    /// It ends then in any case.
    static final Duration LONGEST = Duration.ofDays(30);

    /// So many tries a minute from one address, and for one account.
    static final Throttle.Rate A_MINUTE = new Throttle.Rate(5, Duration.ofMinutes(1));

    /// So many a day for one account, from addresses where nobody is signed in to it.
    static final Throttle.Rate A_DAY = new Throttle.Rate(100, Duration.ofDays(1));

    private static final Logger LOG = LoggerFactory.getLogger(SigningIn.class);
    private static final Duration SEEN_EVERY = Duration.ofMinutes(1);

    private final ClassBook book;
    private final InstantSource clock;
    private final Passwords passwords;
    private final Throttle byAddress;
    private final Throttle byAccount;

    SigningIn(ClassBook book, InstantSource clock, Passwords passwords) {
        this.book = book;
        this.clock = clock;
        this.passwords = passwords;
        this.byAddress = new Throttle(clock, List.of(A_MINUTE));
        this.byAccount = new Throttle(clock, List.of(A_MINUTE, A_DAY));
    }

    /// What came of a try.
    sealed interface Tried {

        /// Name and password are right.
        record Right(Teacher teacher) implements Tried {}

        /// Name and one-time code are right; a password is to be chosen now.
        record ToChoose(Teacher teacher) implements Tried {}

        /// They are not, or the account is shut, or the code is too old.
        record Wrong() implements Tried {}

        /// There were too many tries; the next is heard after `rest`.
        record Wait(Duration rest) implements Tried {}
    }

    /// Compares a name and a password or one-time code.
    Tried attempt(String name, String secret, Caller caller) {
        Optional<Account> account = book.accounts().named(name);
        Optional<Duration> rest = count(Account.folded(name), account, caller);
        if (rest.isPresent()) {
            LOG.warn("Too many tries to sign in from {}.", caller.address());
            return new Tried.Wait(rest.get());
        }
        if (account.isEmpty()) {
            passwords.compareWithNobody(secret);
        }
        Optional<Teacher> teacher =
                account.filter(one -> isRight(one, secret)).flatMap(one -> teacher(one));
        if (teacher.isEmpty()) {
            LOG.warn(
                    "A try to sign in to {} from {} was wrong.",
                    account.map(Account::teacherId).orElse("an unknown account"),
                    caller.address());
            return new Tried.Wrong();
        }
        byAddress.forgive(caller.address());
        byAccount.forgive(Account.folded(name));
        return account.flatMap(Account::codeUntil).isPresent()
                ? new Tried.ToChoose(teacher.get())
                : new Tried.Right(teacher.get());
    }

    private Optional<Duration> count(String name, Optional<Account> account, Caller caller) {
        Optional<Duration> rest = byAddress.count(caller.address());
        boolean isKnownThere =
                account.stream()
                        .flatMap(one -> book.signIns().of(one.teacherId()).stream())
                        .anyMatch(one -> one.address().equals(caller.address()));
        return rest.isPresent() || isKnownThere ? rest : byAccount.count(name);
    }

    private boolean isRight(Account account, String secret) {
        boolean isCode = account.codeUntil().isPresent();
        boolean same =
                passwords.matches(isCode ? OneTimeCode.tidy(secret) : secret, account.secret());
        boolean counts = account.codeUntil().filter(clock.instant()::isAfter).isEmpty();
        return same && counts && !account.disabled();
    }

    private Optional<Teacher> teacher(Account account) {
        return book.teachers().find(account.teacherId());
    }

    /// Begins a sign-in with a token that never was before, and ends the one that the caller had.
    Token begin(Teacher teacher, Caller caller) {
        Instant now = clock.instant();
        Token token = Token.fresh();
        book.whole(() -> {
            end(caller);
            book.signIns().endOld(now.minus(IDLE), now.minus(LONGEST));
            book.signIns()
                    .keep(
                            new SignIn(
                                    Identity.fresh(),
                                    token.digest(),
                                    teacher.id(),
                                    caller.address(),
                                    now,
                                    now));
        });
        LOG.info("{} signed in from {}.", teacher.id(), caller.address());
        return token;
    }

    /// Ends the sign-in that the caller carries, if any.
    void end(Caller caller) {
        current(caller)
                .ifPresent(signIn -> {
                    book.signIns().end(signIn.id());
                    LOG.info("{} signed out.", signIn.teacherId());
                });
    }

    /// The sign-in that the caller carries, where it has not ended.
    Optional<SignIn> current(Caller caller) {
        Instant now = clock.instant();
        return SignInCookie.read(caller)
                .flatMap(token -> book.signIns().find(token.digest()))
                .filter(one -> one.seenAt().plus(IDLE).isAfter(now))
                .filter(one -> one.begunAt().plus(LONGEST).isAfter(now));
    }

    /// As [#current], and notes that the browser was seen.
    Optional<SignIn> see(Caller caller) {
        Optional<SignIn> current = current(caller);
        Instant now = clock.instant();
        current.filter(one -> one.seenAt().plus(SEEN_EVERY).isBefore(now))
                .ifPresent(one -> book.signIns().see(one.id(), now));
        return current;
    }
}
