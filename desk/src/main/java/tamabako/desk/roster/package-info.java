/// Rosters on pages: a file is sent, what it would do is shown, and one press writes it; lists go
/// out as CSV and XLSX.
///
/// Between the two steps nothing is kept on the desk: the page that shows what would happen carries
/// the file itself, so that any copy of the desk can take it.
@NullMarked
package tamabako.desk.roster;

import org.jspecify.annotations.NullMarked;
