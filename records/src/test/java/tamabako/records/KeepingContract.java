package tamabako.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tamabako.records.demo.DemoClass;
import tamabako.records.keeping.Backup;
import tamabako.records.keeping.Passphrase;
import tamabako.testkit.Draw;

/// Backup and restore, whatever the book is kept in. Every store has a test of its own that is this
/// one.
abstract class KeepingContract {

    static final Instant NOW = Instant.parse("2026-04-16T09:00:00Z");
    static final Optional<Passphrase> OURS = Optional.of(Passphrase.choose("六つの珠 six beads"));

    @TempDir Path folder;

    /// A database that nothing was ever put in, another one at each call.
    abstract Database fresh();

    Database file() {
        return new Database.Embedded(folder.resolve(Identity.fresh()).resolve("book.sqlite"));
    }

    static byte[] backup(ClassBook book, Optional<Passphrase> passphrase) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            Backup.write(book, passphrase, NOW, WholeBook.NOBODY, out);
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
        return out.toByteArray();
    }

    static Map<String, Long> restore(byte[] bytes, ClassBook book, boolean replace) {
        return Backup.read("a.backup", bytes).restore(OURS, book, replace, WholeBook.NOBODY);
    }

    static void assertRefused(Class<? extends Reason> why, Runnable tried) {
        assertThatThrownBy(tried::run)
                .isInstanceOfSatisfying(
                        RecordsFailure.class,
                        failed -> assertThat(failed.reason()).isInstanceOf(why));
    }

    @Test
    void everyTableIsCopiedOrSaysThatItStays() {
        try (ClassBook book = ClassBook.open(fresh())) {
            EveryTable.fill(book);
            Set<String> copied = new TreeSet<>();
            book.tables()
                    .read(
                            new WholeBook() {
                                @Override
                                public void table(String name, List<String> columns) {
                                    copied.add(name);
                                }

                                @Override
                                public void row(String line) {}
                            });
            copied.addAll(Tables.STAYING);
            copied.add("flyway_schema_history");
            assertThat(copied).isEqualTo(EveryTable.names(book)).hasSizeGreaterThan(14);
            assertThat(EveryTable.rows(book))
                    .hasSize(EveryTable.ROWS * (copied.size() - 1 - Tables.STAYING.size()));
        }
    }

    @Test
    void aFullBookComesBackRowByRowLockedOrOpen() {
        for (Optional<Passphrase> passphrase : List.of(OURS, Optional.<Passphrase>empty())) {
            byte[] bytes;
            List<String> before;
            try (ClassBook book = ClassBook.open(fresh())) {
                DemoClass.fill(book, NOW);
                EveryTable.fill(book);
                bytes = backup(book, passphrase);
                before = EveryTable.rows(book);
                assertThat(before).hasSizeGreaterThan(500);
            }
            assertThat(Backup.read("a.backup", bytes).isLocked()).isEqualTo(passphrase.isPresent());
            for (Database other : List.of(fresh(), file())) {
                try (ClassBook book = ClassBook.open(other)) {
                    Map<String, Long> counts = restore(bytes, book, false);
                    assertThat(counts.values().stream().mapToLong(Long::longValue).sum())
                            .isEqualTo(before.size());
                    assertThat(EveryTable.rows(book)).isEqualTo(before);
                }
            }
        }
    }

    @Test
    void anEmptyBookComesBackEmpty() {
        try (ClassBook book = ClassBook.open(fresh());
                ClassBook other = ClassBook.open(fresh())) {
            restore(backup(book, OURS), other, false);
            assertThat(other.tables().rows()).isZero();
        }
    }

    @Test
    void theDemoClassMakesRoomAndAnythingElseOnlyWhenAsked() {
        try (ClassBook book = ClassBook.open(fresh());
                ClassBook other = ClassBook.open(fresh())) {
            EveryTable.fill(book);
            byte[] bytes = backup(book, OURS);
            DemoClass.fill(other, NOW);
            restore(bytes, other, false);
            assertThat(EveryTable.rows(other)).isEqualTo(EveryTable.rows(book));

            DemoClass.fill(other, NOW);
            List<String> before = EveryTable.rows(other);
            assertRefused(Reason.NotEmpty.class, () -> restore(bytes, other, false));
            assertThat(EveryTable.rows(other)).isEqualTo(before);

            other.groups().keep(Group.of("One more"));
            restore(bytes, other, true);
            assertThat(EveryTable.rows(other)).isEqualTo(EveryTable.rows(book));
        }
    }

    @Test
    void aWrongPassphraseChangesNothing() {
        try (ClassBook book = ClassBook.open(fresh())) {
            EveryTable.fill(book);
            List<String> before = EveryTable.rows(book);
            Backup backup = Backup.read("a.backup", backup(book, OURS));
            assertRefused(
                    Reason.WrongPassphrase.class,
                    () ->
                            backup.restore(
                                    Passphrase.typed("六つの珠 six bead"),
                                    book,
                                    true,
                                    WholeBook.NOBODY));
            assertRefused(
                    Reason.NeedsPassphrase.class,
                    () -> backup.restore(Optional.empty(), book, true, WholeBook.NOBODY));
            assertThat(EveryTable.rows(book)).isEqualTo(before);

            // Wide letters of a Japanese keyboard are the same words.
            backup.restore(Passphrase.typed(" 六つの珠　ｓｉｘ beads"), book, true, WholeBook.NOBODY);
            assertThat(EveryTable.rows(book)).isEqualTo(before);
        }
    }

    @Test
    void aFileThatWasCutOrChangedAnywhereIsRefusedAndNothingIsHalfWritten() {
        try (ClassBook book = ClassBook.open(fresh());
                ClassBook other = ClassBook.open(fresh())) {
            EveryTable.fill(book);
            other.groups().keep(Group.of("Stays"));
            List<String> before = EveryTable.rows(other);
            for (boolean locked : List.of(false, true)) {
                byte[] bytes = backup(book, locked ? OURS : Optional.empty());
                for (int seed = 0; seed < (locked ? 12 : 150); seed++) {
                    byte[] broken = broken(bytes, new Draw(seed));
                    assertThatThrownBy(() -> restore(broken, other, true))
                            .as("seed %d, locked %s", seed, locked)
                            .isInstanceOf(RecordsFailure.class);
                }
            }
            assertThat(EveryTable.rows(other)).isEqualTo(before);
        }
    }

    /// Cut short, a bit turned over, or something hung on.
    private static byte[] broken(byte[] bytes, Draw draw) {
        int place = draw.between(0, bytes.length - 1);
        return switch (draw.between(1, 3)) {
            case 1 -> Arrays.copyOf(bytes, place);
            case 2 -> Arrays.copyOf(bytes, bytes.length + 1 + place);
            default -> {
                byte[] turned = bytes.clone();
                turned[place] ^= (byte) (1 << draw.between(0, 7));
                yield turned;
            }
        };
    }

    @Test
    void whatIsNoBackupIsTold() {
        for (String text :
                List.of("", "\n", "PK\u0003\u0004", "tamabako class book backup 1 open", "Dear")) {
            assertRefused(
                    Reason.NoBackup.class,
                    () -> Backup.read("a", text.getBytes(StandardCharsets.UTF_8)));
        }
        assertRefused(
                Reason.NewerBackup.class,
                () ->
                        Backup.read(
                                "a",
                                "tamabako class book backup 2 open\nxx"
                                        .getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void whatAnEarlierVersionKeptIsBroughtUpToDate() {
        Path old = folder.resolve("old.sqlite");
        byte[] bytes;
        try (ClassBook book = ClassBook.openAsOf(1, old)) {
            book.door()
                    .tell(handle -> {
                        handle.execute("insert into pupil_group values ('g', 'Tuesday', 0)");
                        handle.execute("insert into pupil values ('p', 'g', 'Aoi', 'ja', 0)");
                        handle.execute(
                                "insert into sheet values ('s', 'One', '', '2026-04-14T07:05:00Z', 0)");
                    });
            bytes = backup(book, Optional.empty());
        }
        try (ClassBook book = ClassBook.open(fresh())) {
            restore(bytes, book, false);
            assertThat(book.pupils().find("p")).map(Pupil::name).contains("Aoi");
            assertThat(EveryTable.rows(book))
                    .anyMatch(row -> row.contains("2026-04-14T07:05:00.000000000Z"));
        }
    }

    @Test
    void whatALaterVersionKeptIsLeftAlone() {
        try (ClassBook book = ClassBook.open(fresh());
                ClassBook earlier = ClassBook.openAsOf(2, folder.resolve("earlier.sqlite"))) {
            byte[] bytes = backup(book, Optional.empty());
            assertRefused(Reason.NewerBackup.class, () -> restore(bytes, earlier, true));
        }
    }
}
