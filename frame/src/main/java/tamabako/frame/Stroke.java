package tamabako.frame;

/// One push of one finger on one rod.
public sealed interface Stroke {

    /// The rod, numbered by its power of ten.
    int rod();

    /// Whether the bead comes to the beam or leaves it.
    Direction direction();

    /// An upper bead slides alone.
    record Upper(int rod, Direction direction) implements Stroke {}

    /// `beads` neighbouring lower beads slide as one block.
    record Lower(int rod, int beads, Direction direction) implements Stroke {
        public Lower {
            if (beads < 1 || beads > 5) {
                throw new IllegalArgumentException(
                        "A finger pushes 1 to 5 lower beads, not %d.".formatted(beads));
            }
        }
    }

    /// By how much this stroke changes the count of its rod: 1 to 5, or -1 to -5.
    default int change() {
        return switch (this) {
            case Upper(_, Direction direction) -> 5 * direction.sign();
            case Lower(_, int beads, Direction direction) -> beads * direction.sign();
        };
    }
}
