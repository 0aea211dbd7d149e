/// The voices: words recorded once, as clips.
///
/// Clips are cut by `scripts/make-clips` out of phrases that a speech engine speaks whole. A word
/// has a clip for the middle of a number and one for its end, so that the melody joins. The files
/// lie beside this class, compressed by ITU-T G.711 mu-law, with the notice of where they come
/// from.
@NullMarked
package tamabako.voice.clip;

import org.jspecify.annotations.NullMarked;
