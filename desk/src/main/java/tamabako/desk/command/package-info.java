/// The commands, one a file: each reads a file or standard input, writes a file or standard output,
/// tells progress on standard error, and exits with 0 (done), 1 (something in the input was wrong,
/// told line by line, the rest done) or 2 (could not run).
@NullMarked
package tamabako.desk.command;

import org.jspecify.annotations.NullMarked;
