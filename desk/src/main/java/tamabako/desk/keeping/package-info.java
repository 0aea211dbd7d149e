/// The page from which the class book is kept: rosters in, lists out, backup and restore.
///
/// A backup is made with one press and saved by the browser; restoring one shows in the page what
/// stands against it, and changes nothing then.
@NullMarked
package tamabako.desk.keeping;

import org.jspecify.annotations.NullMarked;
