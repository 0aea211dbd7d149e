/// Whether numbers shown one after another are safe to look at for people with photosensitive
/// epilepsy.
///
/// [FlashAnalyser] takes the pictures of a showing with their times, as they were planned or as
/// they were measured, and gives a [FlashReport] with a [Verdict] by WCAG 2.2, success criterion
/// 2.3.1, read the strict way. [Field] is the piece of a screen that the nearest viewer sees at a
/// glance. Two rules are safe by construction, and the desk plans by them: rows no taller than
/// [Field#tallestRow()], or numbers no closer than [FlashAnalyser#LEAST_PERIOD] apart.
///
/// None of this is medical advice; a person who may be sensitive asks a doctor.
@NullMarked
package tamabako.showing.safety;

import org.jspecify.annotations.NullMarked;
