/// Numbers shown one after another for mental work: the page where a showing is planned, the stage
/// on which it runs, and the marking of what was answered.
///
/// The server says what is shown and when; the stage measures its screen, looks for flashes with
/// the same rules as `tamabako.showing.safety`, and only then runs.
@NullMarked
package tamabako.desk.showing;

import org.jspecify.annotations.NullMarked;
