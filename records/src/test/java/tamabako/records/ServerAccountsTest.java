package tamabako.records;

/// Accounts in PostgreSQL.
class ServerAccountsTest extends AccountsContract {

    @Override
    Database fresh() {
        return TestServer.fresh("UTF8");
    }
}
