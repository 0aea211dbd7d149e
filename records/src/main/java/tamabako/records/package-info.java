/// The class book: groups, pupils, the sheets that were made, and the work that was handed in.
///
/// ```java
/// try (ClassBook book = ClassBook.open(folder.resolve("classbook.sqlite"))) {
///     book.sheets().keep(sheet);
///     book.work().keep(Work.of(sheet, pupil, answers, now));
/// }
/// ```
///
/// What is kept is on the disk when the method returns: the embedded database writes ahead and
/// flushes each commit. Only this module knows SQL.
@NullMarked
package tamabako.records;

import org.jspecify.annotations.NullMarked;
