package tamabako.frame;

/// The beads of one rod that touch the beam: `upper` ones worth five, `lower` ones worth one.
public record Rod(int upper, int lower) {

    /// A rod at zero.
    public static final Rod CLEAR = new Rod(0, 0);

    public Rod {
        if (upper < 0 || lower < 0) {
            throw new IllegalArgumentException(
                    "A rod cannot hold %d upper and %d lower beads.".formatted(upper, lower));
        }
    }

    /// The plain way to show a digit from 0 to 9: the upper bead for five, lower beads for the
    /// rest.
    public static Rod showing(int digit) {
        if (digit < 0 || digit > 9) {
            throw new IllegalArgumentException(
                    "A rod shows a digit from 0 to 9, not " + digit + ".");
        }
        return new Rod(digit / 5, digit % 5);
    }

    /// What the rod counts: 0 to 9 on a modern frame, more where a frame has more beads.
    public int value() {
        return 5 * upper + lower;
    }

    /// Whether this is the plain way to show its value, as [#showing(int)] would.
    public boolean isPlain() {
        return upper <= 1 && lower <= 4;
    }
}
