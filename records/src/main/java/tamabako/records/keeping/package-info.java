/// Keeping the class book safe: a backup is one file with everything in it, locked with a
/// passphrase or open; restoring it, and moving a book to another database, are counted and checked
/// row by row and leave nothing half written.
///
/// ```java
/// Backup.write(book, passphrase, now, WholeBook.NOBODY, out);
/// Backup.read("book.backup", bytes).restore(passphrase, other, false, WholeBook.NOBODY);
/// Move.all(book, other, false, WholeBook.NOBODY);
/// ```
///
/// A backup is made of rows, not of the database's own files, so that it can be restored into any
/// database the program knows, and by every later version of the program.
@NullMarked
package tamabako.records.keeping;

import org.jspecify.annotations.NullMarked;
