package tamabako.problems.grade;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;
import tamabako.frame.Technique;

/// What the steps of a column may be done by, for those who learn them one by one.
///
/// @param allowed the techniques that steps may be done by
/// @param required the techniques that must each occur in every column
/// @param inTaking whether they must occur where a digit is taken, in columns with minus rows
/// @param runningOn what becomes of carries and borrows that run on over full or empty rods
public record Beadwork(
        Set<Technique> allowed, Set<Technique> required, boolean inTaking, RunningOn runningOn) {

    /// Any technique, none of them in particular.
    public static final Beadwork ANY =
            new Beadwork(
                    EnumSet.allOf(Technique.class),
                    EnumSet.noneOf(Technique.class),
                    false,
                    RunningOn.ALLOWED);

    public Beadwork {
        allowed = Collections.unmodifiableSet(new TreeSet<>(allowed));
        required = Collections.unmodifiableSet(new TreeSet<>(required));
        if (!allowed.containsAll(required)) {
            throw new IllegalArgumentException(
                    "%s are required, but only %s allowed.".formatted(required, allowed));
        }
    }

    /// Carries over a rod that holds 9 and borrows over one that holds 0, which pass to the next.
    public enum RunningOn {
        ALLOWED,
        NEVER,
        /// Every column has one at least.
        REQUIRED
    }
}
