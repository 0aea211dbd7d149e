package tamabako.insight.slip;

/// A part of the finder that can be left out of a problem's table, to see what it is worth; the
/// figures are in docs/validation.md. Nothing is left out in earnest.
public enum Omission {
    /// Whether the beads that a slip moves are there: without it, every slip is thought possible on
    /// every rod.
    BEAD_CHECK,
    /// Two and three slips in one sum.
    SEVERAL_SLIPS,
    /// Slips of the pencil, alone or after a slip of the work.
    PENCIL
}
