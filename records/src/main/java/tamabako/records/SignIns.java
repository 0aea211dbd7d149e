package tamabako.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/// Who is signed in.
public final class SignIns {

    private final Door door;

    SignIns(Door door) {
        this.door = door;
    }

    /// The sign-in that has this token, unless its account is shut.
    ///
    /// @param token the SHA-256 of what the browser carries
    public Optional<SignIn> find(String token) {
        return door.ask(book ->
                book.createQuery(
                                """
                                select s.* from sign_in s join account a on a.teacher_id = s.teacher_id
                                where s.token = :token and a.disabled = 0
                                """)
                        .bind("token", token)
                        .map((row, _) -> signIn(row))
                        .findOne());
    }

    /// All of one teacher, the latest first.
    public List<SignIn> of(String teacherId) {
        return door.ask(book ->
                book.createQuery(
                                """
                                select * from sign_in where teacher_id = :teacher
                                order by begun_at desc, id
                                """)
                        .bind("teacher", teacherId)
                        .map((row, _) -> signIn(row))
                        .list());
    }

    /// Puts a sign-in in the book.
    public void keep(SignIn signIn) {
        door.tell(book ->
                book.createUpdate(
                                """
                                insert into sign_in
                                    (id, token, teacher_id, address, begun_at, seen_at)
                                values (:id, :token, :teacher, :address, :begun, :seen)
                                """)
                        .bind("id", signIn.id())
                        .bind("token", signIn.token())
                        .bind("teacher", signIn.teacherId())
                        .bind("address", signIn.address())
                        .bind("begun", Moments.write(signIn.begunAt()))
                        .bind("seen", Moments.write(signIn.seenAt()))
                        .execute());
    }

    /// Notes that its browser was seen.
    public void see(String id, Instant at) {
        door.tell(book ->
                book.createUpdate("update sign_in set seen_at = :at where id = :id")
                        .bind("id", id)
                        .bind("at", Moments.write(at))
                        .execute());
    }

    /// Ends one.
    public void end(String id) {
        door.tell(book ->
                book.createUpdate("delete from sign_in where id = :id").bind("id", id).execute());
    }

    /// Ends all of one teacher.
    public void endAll(String teacherId) {
        door.tell(book ->
                book.createUpdate("delete from sign_in where teacher_id = :teacher")
                        .bind("teacher", teacherId)
                        .execute());
    }

    /// Ends all that were not seen since `idle`, or that began before `begun`.
    public void endOld(Instant idle, Instant begun) {
        door.tell(book ->
                book.createUpdate("delete from sign_in where seen_at < :idle or begun_at < :begun")
                        .bind("idle", Moments.write(idle))
                        .bind("begun", Moments.write(begun))
                        .execute());
    }

    private static SignIn signIn(ResultSet row) throws SQLException {
        return new SignIn(
                row.getString("id"),
                row.getString("token"),
                row.getString("teacher_id"),
                row.getString("address"),
                Instant.parse(row.getString("begun_at")),
                Instant.parse(row.getString("seen_at")));
    }
}
