package tamabako.records;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

/// Accounts in a file.
class EmbeddedAccountsTest extends AccountsContract {

    @TempDir Path folder;

    @Override
    Database fresh() {
        return new Database.Embedded(folder.resolve(Identity.fresh()).resolve("book.sqlite"));
    }
}
