/// Call scripts: a column as a caller reads it.
///
/// A script has an opening, one line for each row, and what the caller says to a right answer. A
/// line is shown in figures and said in words. The formulae of the trade stand in one data file for
/// each language; [tamabako.voice.script.Caller] puts them together.
@NullMarked
package tamabako.voice.script;

import org.jspecify.annotations.NullMarked;
