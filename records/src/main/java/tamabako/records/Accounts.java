package tamabako.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/// The accounts of teachers and assistants.
public final class Accounts {

    private final Door door;

    Accounts(Door door) {
        this.door = door;
    }

    /// All of them.
    public List<Account> all() {
        return door.ask(book ->
                book.createQuery("select * from account order by name")
                        .map((row, _) -> account(row))
                        .list());
    }

    /// The account of that teacher, if they have one.
    public Optional<Account> find(String teacherId) {
        return door.ask(book ->
                book.createQuery("select * from account where teacher_id = :id")
                        .bind("id", teacherId)
                        .map((row, _) -> account(row))
                        .findOne());
    }

    /// The account that is signed in to by that name, however it is written.
    public Optional<Account> named(String name) {
        return door.ask(book ->
                book.createQuery("select * from account where name = :name")
                        .bind("name", Account.folded(name))
                        .map((row, _) -> account(row))
                        .findOne());
    }

    /// Whether the desk has an owner who can sign in.
    public boolean hasOwner() {
        return door.ask(book ->
                book.createQuery(
                                """
                                select count(*) from account a join teacher t on t.id = a.teacher_id
                                where t.role = 'owner'
                                """)
                        .mapTo(Long.class)
                        .one())
                > 0;
    }

    /// Puts an account in the book, or what is new about it.
    public void keep(Account account) {
        door.tell(book ->
                book.createUpdate(
                                """
                                insert into account (teacher_id, name, secret, code_until, disabled)
                                values (:teacher, :name, :secret, :until, :disabled)
                                on conflict (teacher_id) do update set
                                    name = excluded.name, secret = excluded.secret,
                                    code_until = excluded.code_until, disabled = excluded.disabled
                                """)
                        .bind("teacher", account.teacherId())
                        .bind("name", account.name())
                        .bind("secret", account.secret())
                        .bind("until", account.codeUntil().map(Moments::write).orElse(null))
                        .bind("disabled", Rows.flag(account.disabled()))
                        .execute());
    }

    private static Account account(ResultSet row) throws SQLException {
        return new Account(
                row.getString("teacher_id"),
                row.getString("name"),
                row.getString("secret"),
                Optional.ofNullable(row.getString("code_until")).map(Instant::parse),
                row.getBoolean("disabled"));
    }
}
