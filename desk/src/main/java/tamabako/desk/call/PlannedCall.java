package tamabako.desk.call;

import tamabako.voice.script.CallScript;
import tamabako.voice.sound.Pace;
import tamabako.voice.sound.Sounded;
import tamabako.voice.sound.Sounding;

/// One call of a plan.
///
/// @param number its place in the plan, from 1
/// @param digits the most figures of a row
/// @param script what is said
/// @param pace how fast
record PlannedCall(int number, int digits, CallScript script, Pace pace) {

    /// Its sound, or why there is none.
    Sounded sound() {
        return Sounding.of(script, pace);
    }
}
