package tamabako.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tamabako.records.demo.DemoClass;
import tamabako.records.keeping.Move;

/// Backup and restore of a book in PostgreSQL, and moving between the two.
class ServerKeepingTest extends KeepingContract {

    @Override
    Database fresh() {
        return TestServer.fresh("UTF8");
    }

    @Test
    void aBookIsTheSameAfterMovingToTheServerAndBack() {
        try (ClassBook file = ClassBook.open(file());
                ClassBook server = ClassBook.open(fresh());
                ClassBook back = ClassBook.open(file())) {
            DemoClass.fill(file, NOW);
            EveryTable.fill(file);
            List<String> before = EveryTable.rows(file);

            Move.all(file, server, false, WholeBook.NOBODY);
            assertThat(EveryTable.rows(server)).isEqualTo(before);
            Move.all(server, back, false, WholeBook.NOBODY);

            assertThat(EveryTable.rows(back)).isEqualTo(before);
            assertThat(EveryTable.rows(file)).isEqualTo(before);
            assertRefused(
                    Reason.NotEmpty.class, () -> Move.all(back, server, false, WholeBook.NOBODY));
        }
    }

    @Test
    void aRowThatIsNotTheSameAfterCopyingUndoesAll() {
        try (ClassBook file = ClassBook.open(file());
                ClassBook server = ClassBook.open(fresh())) {
            EveryTable.fill(file);
            server.door()
                    .tell(book ->
                            book.execute(
                                    """
                                    create function spoil() returns trigger language plpgsql as
                                    'begin new.words := lower(new.words) || ''.''; return new; end';
                                    create trigger spoil before insert on note
                                        for each row execute function spoil()
                                    """));
            assertRefused(
                    Reason.NotTheSame.class, () -> Move.all(file, server, false, WholeBook.NOBODY));
            assertThat(server.tables().rows()).isZero();
        }
    }
}
