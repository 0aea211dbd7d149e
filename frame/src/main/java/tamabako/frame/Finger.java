package tamabako.frame;

/// A finger that moves beads. The last three fingers hold the pencil.
public enum Finger {
    THUMB,
    FOREFINGER,
    /// Moves upper beads on the suanpan only.
    MIDDLE_FINGER
}
