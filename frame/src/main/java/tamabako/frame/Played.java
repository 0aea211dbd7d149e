package tamabako.frame;

/// The outcome of trying a stroke.
public sealed interface Played {

    /// The beads moved; this is the frame now.
    record Moved(Frame frame) implements Played {}

    /// The beads cannot move so.
    record Refused(Stroke stroke, Because because) implements Played {}

    /// Why beads do not move.
    enum Because {
        /// The frame has no such rod.
        NO_SUCH_ROD,
        /// Fewer beads than asked are away from the beam.
        NO_BEAD_LEFT_TO_BRING,
        /// Fewer beads than asked touch the beam.
        NO_BEAD_AT_THE_BEAM
    }
}
