/// The page "Make a paper": whole papers of a grade in equal forms, with their keys, marking sheets
/// and slip pads, and what each form asks of a pupil, side by side.
///
/// Each form has a printed name that tells nothing; typed on this page, it leads to what the class
/// book knows of it.
@NullMarked
package tamabako.desk.paper;

import org.jspecify.annotations.NullMarked;
