/// What the work on a frame is called, in the words of the trade.
///
/// One file for each language, `words_<language>.properties`, holds every sentence; [Languages]
/// finds the files, so that a new language is one new file. [StepWords] says a working step by
/// step, names places and fingers, reads a frame aloud and tells why a sum cannot be worked.
///
/// One worked example, 34 + 78, as `StepWords.of(Locale.ENGLISH)` says it:
///
/// ```
/// 034
/// 004  Row 2. Add 7 to the tens: 7 = 10 − 3, so take 3 off.    +7 = −3 +10
/// 104  Carry 1 to the hundreds.                                +1
/// 102  Add 8 to the ones: 8 = 10 − 2, so take 2 off.           +8 = −2 +10
/// 112  Carry 1 to the tens.                                    +1
/// ```
@NullMarked
package tamabako.frame.words;

import org.jspecify.annotations.NullMarked;
