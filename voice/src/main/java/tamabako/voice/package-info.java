/// Calling (yomiagezan): numbers read aloud.
///
/// A column becomes a call script ([tamabako.voice.script]), whose numbers are words
/// ([tamabako.voice.number]). For example, the rows 19, 80 and -45 in yen are called in Japanese as
/// "negaimashite wa, jūkyū en nari, hachijū en nari, hiite wa yonjūgo en de wa".
@NullMarked
package tamabako.voice;

import org.jspecify.annotations.NullMarked;
