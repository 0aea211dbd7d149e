package tamabako.frame;

/// How many beads a rod has on each side of the beam.
///
/// Source: Kojima, The Japanese Abacus (1954), for 1:4; common encyclopedia accounts for 1:5 and
/// 2:5.
public enum FrameKind {
    /// Today's soroban: one upper bead, four lower. A rod holds 0 to 9.
    MODERN(1, 4),
    /// The older soroban: one upper bead, five lower. A rod holds 0 to 10.
    OLDER(1, 5),
    /// The suanpan: two upper beads, five lower. A rod holds 0 to 15.
    SUANPAN(2, 5);

    private final int upperBeads;
    private final int lowerBeads;

    FrameKind(int upperBeads, int lowerBeads) {
        this.upperBeads = upperBeads;
        this.lowerBeads = lowerBeads;
    }

    /// Beads above the beam on each rod, worth five each.
    public int upperBeads() {
        return upperBeads;
    }

    /// Beads below the beam on each rod, worth one each.
    public int lowerBeads() {
        return lowerBeads;
    }

    /// The most that one rod can show.
    public int capacity() {
        return 5 * upperBeads + lowerBeads;
    }

    /// Whether a rod of this kind can look like `rod`.
    public boolean holds(Rod rod) {
        return rod.upper() <= upperBeads && rod.lower() <= lowerBeads;
    }
}
