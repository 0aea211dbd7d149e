/// Numbers in words.
///
/// Languages that build their numbers from names of powers of ten are told by rules in a data file
/// ([tamabako.voice.number.SpellingRules]); Japanese, which counts in myriads and changes sounds
/// where words meet, has its own table ([tamabako.voice.number.MyriadReading]). A number is a list
/// of words, each of which is one piece of speech: 456 is "four", "hundred", "fifty-six".
@NullMarked
package tamabako.voice.number;

import org.jspecify.annotations.NullMarked;
