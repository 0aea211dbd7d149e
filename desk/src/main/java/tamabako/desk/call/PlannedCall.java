package tamabako.desk.call;

import tamabako.problems.Column;
import tamabako.voice.script.CallScript;
import tamabako.voice.sound.Pace;
import tamabako.voice.sound.Sounded;
import tamabako.voice.sound.Sounding;

/// One call of a plan.
///
/// @param number its place in the plan, from 1
/// @param column what is called
/// @param digits the most figures of a row
/// @param script what is said
/// @param pace how fast
record PlannedCall(int number, Column column, int digits, CallScript script, Pace pace) {

    /// Its sound, or why there is none.
    Sounded sound() {
        return Sounding.of(script, pace);
    }

    /// The most figures that a row of a column has before its point.
    static int digits(Column column) {
        return column.rows().stream()
                .mapToInt(row -> row.abs().toBigInteger().toString().length())
                .max()
                .orElse(1);
    }
}
