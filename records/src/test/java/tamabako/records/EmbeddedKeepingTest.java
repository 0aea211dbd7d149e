package tamabako.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tamabako.records.keeping.Move;
import tamabako.records.keeping.Passphrase;

/// Backup and restore of a book in a file.
class EmbeddedKeepingTest extends KeepingContract {

    @Override
    Database fresh() {
        return file();
    }

    @Test
    void aBookIsNotMovedOntoItself() {
        Database database = fresh();
        try (ClassBook book = ClassBook.open(database);
                ClassBook again = ClassBook.open(database)) {
            book.groups().keep(Group.of("Tuesday"));
            assertRefused(
                    Reason.SameBook.class, () -> Move.all(book, again, true, WholeBook.NOBODY));
            assertThat(book.groups().all()).hasSize(1);
        }
    }

    @Test
    void aLockedBackupShowsNothingOfWhatIsInIt() {
        try (ClassBook book = ClassBook.open(fresh())) {
            EveryTable.fill(book);
            String open = new String(backup(book, Optional.empty()), StandardCharsets.ISO_8859_1);
            String locked = new String(backup(book, OURS), StandardCharsets.ISO_8859_1);
            // The bytes with which zlib begins.
            assertThat(open).contains("\nx\u009c");
            assertThat(locked).doesNotContain("\nx\u009c");
            assertThat(backup(book, OURS)).isNotEqualTo(backup(book, OURS));
        }
    }

    @Test
    void aShortPassphraseIsRefused() {
        assertThatThrownBy(() -> Passphrase.choose("1234567 "))
                .hasMessageContaining("at least 8 characters");
        assertThat(Passphrase.choose("12345678")).hasToString("a passphrase");
        assertThat(Passphrase.typed("  ")).isEmpty();
    }
}
