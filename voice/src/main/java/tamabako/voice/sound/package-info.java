/// The sound of a call at an exact pace.
///
/// [tamabako.voice.sound.Sounding] joins the clips of each line, fits it into its slot
/// ([tamabako.voice.sound.Stretch]), makes all lines equally loud and puts each where its slot
/// begins, to the sample. For example, at a [tamabako.voice.sound.Pace] of 3 seconds a row the
/// second row begins exactly 48,000 samples after the first.
@NullMarked
package tamabako.voice.sound;

import org.jspecify.annotations.NullMarked;
