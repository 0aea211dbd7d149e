/// What came of exams that pupils sat elsewhere: one line a pupil, for a whole group on the day of
/// the exam or for one pupil.
///
/// Exams go by the ladders and grades that the desk knows, so that what it foretold can be held
/// against them.
@NullMarked
package tamabako.desk.exam;

import org.jspecify.annotations.NullMarked;
