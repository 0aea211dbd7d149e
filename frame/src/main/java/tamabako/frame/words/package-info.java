/// What the work on a frame is called, in the words of the trade.
///
/// One file per language, `words_<language>.properties`, holds every sentence; [Languages] finds
/// the files. [StepWords] says a working step by step, names places and fingers, reads a frame
/// aloud and tells why a sum cannot be worked.
@NullMarked
package tamabako.frame.words;

import org.jspecify.annotations.NullMarked;
