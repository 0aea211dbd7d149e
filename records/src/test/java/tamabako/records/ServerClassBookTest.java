package tamabako.records;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/// The class book in PostgreSQL, which the tests start themselves.
class ServerClassBookTest extends ClassBookContract {

    @Override
    Database fresh() {
        return TestServer.fresh("UTF8");
    }

    private static void assertRefused(Database database, Class<? extends Reason> why) {
        assertThatThrownBy(() -> ClassBook.open(database).close())
                .isInstanceOfSatisfying(
                        RecordsFailure.class,
                        failed ->
                                org.assertj.core.api.Assertions.assertThat(failed.reason())
                                        .isInstanceOf(why));
    }

    @Test
    void aDatabaseWithoutRoomForEveryLanguageIsRefused() {
        assertRefused(TestServer.fresh("LATIN1"), Reason.NoUnicode.class);
    }

    @Test
    void aDatabaseThatIsNotThereIsTold() {
        assertRefused(TestServer.named("no_such_book"), Reason.NotOpened.class);
    }

    @Test
    void aServerThatIsNotThereIsTold() {
        assertRefused(
                new Database.Server(
                        "jdbc:postgresql://localhost:1/book", "me", new Database.Password.None()),
                Reason.NoServer.class);
    }
}
