package tamabako.frame;

/// Which way a bead slides.
public enum Direction {
    /// Toward the beam: the bead begins to count.
    TOWARD_BEAM,
    /// Away from the beam: the bead stops counting.
    AWAY_FROM_BEAM;

    /// +1 toward the beam, -1 away from it.
    public int sign() {
        return this == TOWARD_BEAM ? 1 : -1;
    }
}
