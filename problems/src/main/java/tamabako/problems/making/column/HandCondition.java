package tamabako.problems.making.column;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import tamabako.frame.Technique;

/// What a column asks of the hand. The first row is set and asks for no technique; every step of
/// the others counts, carries and borrows included.
public sealed interface HandCondition extends Condition {

    /// More than any count.
    int ANY = Integer.MAX_VALUE;

    /// Every step is done by one of these techniques.
    record OnlyTechniques(Set<Technique> techniques) implements HandCondition {
        public OnlyTechniques {
            techniques = Collections.unmodifiableSet(new TreeSet<>(techniques));
        }
    }

    /// A technique occurs `least` to `most` times; at most 0 times forbids it.
    record TechniqueCount(Technique technique, int least, int most) implements HandCondition {

        @Override
        public String template() {
            return most == 0
                    ? "condition.technique-none"
                    : "condition.technique-" + Bound.of(least, most);
        }
    }

    /// Somewhere a carry or a borrow runs on over at least so many rods: over two in 95 + 7.
    record CarryRun(int rods) implements HandCondition {}

    /// All rows, the first included, take `least` to `most` strokes; the upper bead of a rod is
    /// one, lower beads of a rod moved together are one.
    record Strokes(int least, int most) implements HandCondition {}
}
