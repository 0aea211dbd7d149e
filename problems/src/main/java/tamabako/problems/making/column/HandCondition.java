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

    /// The longest carry or borrow runs on over `least` to `most` rods: over two in 95 + 7, over
    /// one in 15 + 7, over none where there is none.
    record CarryRun(int least, int most) implements HandCondition {

        /// Somewhere one runs on over at least so many rods.
        public CarryRun(int least) {
            this(least, ANY);
        }

        @Override
        public String template() {
            return most == 0
                    ? "condition.no-carry"
                    : "condition.carry-run-" + Bound.of(least, most);
        }
    }

    /// All rows, the first included, take `least` to `most` strokes; the upper bead of a rod is
    /// one, lower beads of a rod moved together are one.
    record Strokes(int least, int most) implements HandCondition {}
}
