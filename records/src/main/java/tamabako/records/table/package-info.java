/// Lists of the class book for other programs: the pupils of a group, what they handed in, their
/// results. Written as CSV, or as a workbook (XLSX).
///
/// `GroupTables.pupils(book, group, words)` gathers a [BookTable]; [TableCsv] and [TableBook] write
/// it. A text that a spreadsheet would take for a formula is written so that it stays a text.
@NullMarked
package tamabako.records.table;

import org.jspecify.annotations.NullMarked;
