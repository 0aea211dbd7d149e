/// The program: [Tamabako] is where it starts. Commands are in `command`, the server and its pages
/// in `web` and the packages of the single pages.
@NullMarked
package tamabako.desk;

import org.jspecify.annotations.NullMarked;
