/// Opening the desk: the class book in its folder, the demo class on the first start, and the
/// server with every page.
///
/// `OpenDesk.open(folder, false, loopback, 8686)` makes the folder and the book where they are
/// missing; closing it stops the server first and the book after it.
@NullMarked
package tamabako.desk.opening;

import org.jspecify.annotations.NullMarked;
