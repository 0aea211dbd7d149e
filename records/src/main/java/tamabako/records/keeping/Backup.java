package tamabako.records.keeping;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import javax.crypto.CipherOutputStream;
import tamabako.records.ClassBook;
import tamabako.records.Reason;
import tamabako.records.RecordsFailure;
import tamabako.records.WholeBook;

/// One file with everything that a class book holds.
///
/// Its first line says what it is and how it is locked; what follows are JSON lines, packed (zlib,
/// RFC 1950) and then locked.
public final class Backup {

    /// How every backup begins.
    private static final String BEGINNING = "tamabako class book backup 1 ";

    private static final String OPEN = "open";

    private static final int LONGEST_FIRST_LINE = 300;

    private final String name;
    private final byte[] bytes;
    private final String firstLine;
    private final Optional<Lock> lock;

    private Backup(String name, byte[] bytes, String firstLine, Optional<Lock> lock) {
        this.name = name;
        this.bytes = bytes;
        this.firstLine = firstLine;
        this.lock = lock;
    }

    /// Writes a backup of `book` as it is now.
    ///
    /// @param passphrase locks it; without one everybody who has the file can read it
    /// @param made when
    /// @param watching is told what goes by, row by row
    /// @return how many rows of each table are in it
    /// @throws IOException if it cannot be written
    public static Map<String, Long> write(
            ClassBook book,
            Optional<Passphrase> passphrase,
            Instant made,
            WholeBook watching,
            OutputStream out)
            throws IOException {
        Optional<Lock> lock = passphrase.map(_ -> Lock.fresh());
        String firstLine = BEGINNING + lock.map(Lock::toString).orElse(OPEN) + "\n";
        out.write(firstLine.getBytes(StandardCharsets.UTF_8));
        OutputStream locked =
                passphrase
                        .<OutputStream>flatMap(words ->
                                lock.map(one ->
                                        new CipherOutputStream(out, one.sealing(words, firstLine))))
                        .orElse(out);
        try {
            DeflaterOutputStream packed = new DeflaterOutputStream(locked);
            BackupWriting lines = new BackupWriting(packed, made, book.tables().version());
            book.tables().read(new Both(lines, watching));
            Map<String, Long> counts = lines.finish();
            packed.finish();
            if (lock.isPresent()) {
                // Closing is what makes the cipher write its last block and its seal.
                locked.close();
            }
            return counts;
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
    }

    /// The backup in `bytes`.
    ///
    /// @param name what its file is called, for messages
    /// @throws RecordsFailure if it is none
    public static Backup read(String name, byte[] bytes) {
        int end = 0;
        while (end < Math.min(bytes.length, LONGEST_FIRST_LINE) && bytes[end] != '\n') {
            end++;
        }
        String first = new String(bytes, 0, end, StandardCharsets.UTF_8);
        if (!first.startsWith(BEGINNING) || end == bytes.length || bytes[end] != '\n') {
            boolean isNewer = first.matches("tamabako class book backup \\d+ .*");
            throw new RecordsFailure(
                    isNewer && !first.startsWith(BEGINNING)
                            ? new Reason.NewerBackup(name)
                            : new Reason.NoBackup(name));
        }
        String locked = first.substring(BEGINNING.length());
        Optional<Lock> lock = Lock.parse(locked);
        if (lock.isEmpty() && !locked.equals(OPEN)) {
            throw new RecordsFailure(new Reason.NoBackup(name));
        }
        return new Backup(name, bytes, first + "\n", lock);
    }

    /// Whether it is locked with a passphrase.
    public boolean isLocked() {
        return lock.isPresent();
    }

    /// Puts everything back into `book`, whole or not at all. The backup is read to its end and
    /// found whole before the book is touched.
    ///
    /// @param passphrase what was typed, where something was
    /// @param replace whether what the book holds may go
    /// @param watching is told what goes by, row by row
    /// @return how many rows each table has now
    /// @throws RecordsFailure if the backup cannot be opened, is damaged or newer than the program,
    ///   or if the book is not empty and may not be replaced
    public Map<String, Long> restore(
            Optional<Passphrase> passphrase, ClassBook book, boolean replace, WholeBook watching) {
        byte[] packed = open(passphrase);
        int version = look(packed, WholeBook.NOBODY);
        if (version > book.tables().version()) {
            throw new RecordsFailure(new Reason.NewerBackup(name));
        }
        try {
            if (version == book.tables().version()) {
                return book.tables()
                        .fill(replace, taker -> look(packed, new Both(taker, watching)));
            }
            return Earlier.restore(
                    version, taker -> look(packed, new Both(taker, watching)), book, replace);
        } catch (IllegalArgumentException unfit) {
            throw new RecordsFailure(new Reason.DamagedBackup(name), unfit);
        }
    }

    /// The packed lines.
    private byte[] open(Optional<Passphrase> passphrase) {
        int at = firstLine.getBytes(StandardCharsets.UTF_8).length;
        if (lock.isEmpty()) {
            return Arrays.copyOfRange(bytes, at, bytes.length);
        }
        Passphrase words =
                passphrase.orElseThrow(() -> new RecordsFailure(new Reason.NeedsPassphrase(name)));
        return lock.get().open(words, firstLine, bytes, at);
    }

    private int look(byte[] packed, WholeBook taker) {
        ByteArrayInputStream all = new ByteArrayInputStream(packed);
        Inflater unpacking = new Inflater();
        try (InflaterInputStream lines = new InflaterInputStream(all, unpacking)) {
            int version = new BackupReading(lines).read(taker);
            if (unpacking.getRemaining() > 0 || all.available() > 0) {
                throw new IOException("Something was hung on.");
            }
            return version;
        } catch (IOException damaged) {
            throw new RecordsFailure(new Reason.DamagedBackup(name), damaged);
        } finally {
            unpacking.end();
        }
    }
}
