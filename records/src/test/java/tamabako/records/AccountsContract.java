package tamabako.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/// What a class book knows of accounts, whatever it is kept in.
abstract class AccountsContract {

    private static final Instant TUESDAY = Instant.parse("2026-04-14T07:05:00Z");
    private static final Teacher MORI = new Teacher("m", "Ｍｏｒｉ　Hana", Teacher.Role.OWNER, false);
    private static final Teacher SATO = new Teacher("s", "佐藤", Teacher.Role.ASSISTANT, false);

    /// A database that nothing was ever put in, another one at each call.
    abstract Database fresh();

    private static SignIn signIn(String id, Teacher teacher, Instant seen) {
        return new SignIn(id, "token-" + id, teacher.id(), "192.0.2.7", TUESDAY, seen);
    }

    @Test
    void anAccountIsFoundByItsTeacherAndByItsNameHoweverWritten() {
        Database database = fresh();
        Account account = Account.withPassword(MORI, "hash");
        try (ClassBook book = ClassBook.open(database)) {
            assertThat(book.accounts().hasOwner()).isFalse();
            book.teachers().keep(MORI);
            assertThat(book.accounts().hasOwner()).isFalse();
            book.accounts().keep(account);
        }
        try (ClassBook book = ClassBook.open(database)) {
            assertThat(book.teachers().find("m")).contains(MORI);
            assertThat(book.teachers().find("x")).isEmpty();
            assertThat(book.accounts().hasOwner()).isTrue();
            assertThat(book.accounts().find("m")).contains(account);
            assertThat(book.accounts().named(" mori  HANA ")).contains(account);
            assertThat(book.accounts().named("Mori")).isEmpty();
            assertThat(book.accounts().all()).containsExactly(account);
        }
    }

    @Test
    void aCodeAPasswordAndAShutAccountReplaceEachOther() {
        try (ClassBook book = ClassBook.open(fresh())) {
            book.teachers().keep(SATO);
            Account waiting = Account.withCode(SATO, "code", TUESDAY);
            book.accounts().keep(waiting);
            assertThat(book.accounts().find("s")).contains(waiting);

            book.accounts().keep(waiting.with("hash").disabled(true));
            assertThat(book.accounts().find("s"))
                    .contains(new Account("s", "佐藤", "hash", Optional.empty(), true));

            book.accounts().keep(waiting.with("other code", TUESDAY.plusNanos(1)));
            assertThat(book.accounts().find("s"))
                    .contains(
                            new Account(
                                    "s",
                                    "佐藤",
                                    "other code",
                                    Optional.of(TUESDAY.plusNanos(1)),
                                    false));
        }
    }

    @Test
    void aDeskHasOneOwnerAndANameOneAccount() {
        try (ClassBook book = ClassBook.open(fresh())) {
            book.teachers().keep(MORI);
            Teacher second = new Teacher("o", "Kudo", Teacher.Role.OWNER, false);
            assertThatThrownBy(() -> book.teachers().keep(second))
                    .isInstanceOf(RecordsFailure.class);
            assertThat(book.teachers().all()).containsExactly(MORI);

            book.accounts().keep(Account.withPassword(MORI, "hash"));
            Teacher same = new Teacher("n", "mori hana", Teacher.Role.TEACHER, false);
            book.teachers().keep(same);
            assertThatThrownBy(() -> book.accounts().keep(Account.withPassword(same, "hash")))
                    .isInstanceOf(RecordsFailure.class);
        }
    }

    @Test
    void aSignInIsKnownByItsTokenUntilItEnds() {
        try (ClassBook book = ClassBook.open(fresh())) {
            book.teachers().keep(MORI);
            book.accounts().keep(Account.withPassword(MORI, "hash"));
            SignIn first = signIn("1", MORI, TUESDAY);
            SignIn second = signIn("2", MORI, TUESDAY);
            book.signIns().keep(first);
            book.signIns().keep(second);
            assertThat(book.signIns().find("token-1")).contains(first);
            assertThat(book.signIns().find("token-3")).isEmpty();

            Instant later = TUESDAY.plusSeconds(90);
            book.signIns().see("1", later);
            assertThat(book.signIns().find("token-1")).contains(signIn("1", MORI, later));

            book.signIns().end("1");
            assertThat(book.signIns().find("token-1")).isEmpty();
            assertThat(book.signIns().of("m")).containsExactly(second);
            book.signIns().endAll("m");
            assertThat(book.signIns().of("m")).isEmpty();
        }
    }

    @Test
    void aShutAccountHasNoSignIns() {
        try (ClassBook book = ClassBook.open(fresh())) {
            book.teachers().keep(SATO);
            Account open = Account.withPassword(SATO, "hash");
            book.accounts().keep(open);
            book.signIns().keep(signIn("1", SATO, TUESDAY));
            book.accounts().keep(open.disabled(true));
            assertThat(book.signIns().find("token-1")).isEmpty();
        }
    }

    @Test
    void oldSignInsEndAndThoseOfWhoeverIsTakenOutOfTheBook() {
        try (ClassBook book = ClassBook.open(fresh())) {
            book.teachers().keep(MORI);
            book.teachers().keep(SATO);
            book.accounts().keep(Account.withPassword(SATO, "hash"));
            book.signIns().keep(signIn("1", MORI, TUESDAY));
            book.signIns().keep(signIn("2", MORI, TUESDAY.plusSeconds(1)));
            book.signIns().keep(signIn("3", SATO, TUESDAY.plusSeconds(1)));

            book.signIns().endOld(TUESDAY.plusSeconds(1), TUESDAY.minus(Duration.ofDays(30)));
            assertThat(book.signIns().of("m")).extracting(SignIn::id).containsExactly("2");
            book.teachers().remove("s");
            assertThat(book.signIns().of("s")).isEmpty();
            assertThat(book.accounts().all()).isEmpty();

            book.signIns().endOld(TUESDAY, TUESDAY.plusNanos(1));
            assertThat(book.signIns().of("m")).isEmpty();
        }
    }
}
