/// Problems as CSV (RFC 4180), for spreadsheets: one problem a line, each number in a cell of its
/// own.
///
/// `id,kind,1,2,3,answer` and `1,column,54,-29,38,63` are the column 54 - 29 + 38. The columns of
/// the file are told in docs/formats.md. What is written comes back without loss.
@NullMarked
package tamabako.problems.csv;

import org.jspecify.annotations.NullMarked;
