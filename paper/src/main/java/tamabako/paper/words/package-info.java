/// The words of print, one file a language: `words_en.properties`, `words_ja.properties`. Another
/// language is another file.
///
/// Example: in Japanese `PrintWords.of(Locale.JAPANESE).say("name")` is 名前.
@NullMarked
package tamabako.paper.words;

import org.jspecify.annotations.NullMarked;
