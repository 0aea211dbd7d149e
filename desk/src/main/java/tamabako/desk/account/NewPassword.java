package tamabako.desk.account;

import java.util.List;
import java.util.Optional;
import tamabako.desk.web.Words;
import tamabako.records.Account;
import tamabako.records.ClassBook;
import tamabako.records.Teacher;

/// Takes a password that someone chose, or tells why it cannot be taken.
final class NewPassword {

    private final ClassBook book;
    private final Passwords passwords;
    private final Strength strength = new Strength();

    NewPassword(ClassBook book, Passwords passwords) {
        this.book = book;
        this.passwords = passwords;
    }

    /// Why it cannot be the password of whoever is called `name`, in the reader's words.
    Optional<String> fault(String password, String name, Words words) {
        return strength.weakness(password, List.of(name))
                .map(weakness ->
                        switch (weakness) {
                            case SHORT -> words.say("weak.short", Strength.SHORTEST);
                            case LONG -> words.say("weak.long", Strength.LONGEST);
                            case GUESSABLE -> words.say("weak.guessable");
                        });
    }

    /// Puts the teacher and an account with that password in the book.
    void keepWithAccount(Teacher teacher, String password) {
        Account account = Account.withPassword(teacher, passwords.hash(password));
        book.whole(() -> {
            book.teachers().keep(teacher);
            book.accounts().keep(account);
        });
    }

    /// Gives an account that password; every sign-in with the old one ends.
    void change(String teacherId, String password) {
        String hash = passwords.hash(password);
        book.whole(() -> {
            Account account = book.accounts().find(teacherId).orElseThrow();
            book.accounts().keep(account.with(hash));
            book.signIns().endAll(teacherId);
        });
    }
}
