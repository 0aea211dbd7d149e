/// Rosters: lists of pupils from a spreadsheet (CSV, XLSX) or a school's system (OneRoster 1.2
/// CSV), into the class book and out of it.
///
/// A file is read into entries; entries are planned against the book, which shows what would happen
/// (the dry run); a plan is then written in one transaction. The same file once more changes
/// nothing, and nothing is ever removed.
///
/// ```java
/// Read read = RosterFile.read(bytes);
/// Plan plan = Importing.plan(book, roster, wishes);  // 12 new, 1 changed, 3 the same
/// Importing.write(book, roster, wishes);
/// ```
@NullMarked
package tamabako.records.roster;

import org.jspecify.annotations.NullMarked;
