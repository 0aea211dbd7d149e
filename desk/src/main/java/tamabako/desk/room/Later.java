package tamabako.desk.room;

import java.util.OptionalLong;

/// An answer that came when it could not count any more: the time was up, or the class was at
/// another round or another problem. The teacher may let it in.
///
/// @param run which run of a round it answers
/// @param problem from 0
/// @param written as the pupil wrote it
/// @param mark the word of its mark
/// @param at when it came, in milliseconds of the epoch
public record Later(int run, int problem, String written, String mark, long at) {

    /// The answer itself; how long it took nobody knows.
    public Answered answer() {
        return new Answered(written, mark, OptionalLong.empty());
    }

    boolean answersTheSameAs(Later other) {
        return run == other.run && problem == other.problem;
    }
}
