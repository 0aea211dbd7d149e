/// What a pupil wrote, judged: [Marker] reads it, compares it with the right answer and looks at
/// its form under the [WritingRules]; the outcome is a [Mark].
///
/// The answer to 4,764 x 2 yen is [Written] `¥9,528`. A pupil who writes `9,528` or `¥9,528.` is
/// right, `¥9528` has the right value in a wrong form (no comma), `¥9,529` is wrong, `?` is
/// unclear. Source of the rules: the Japan Chamber of Commerce and Industry's rules for writing
/// answers in the abacus proficiency test.
@NullMarked
package tamabako.problems.marking;

import org.jspecify.annotations.NullMarked;
