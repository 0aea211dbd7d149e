package tamabako.records;

/// What the desk does with the book, in PostgreSQL.
class ServerDeskWorkTest extends DeskWorkContract {

    @Override
    Database fresh() {
        return TestServer.fresh("UTF8");
    }
}
