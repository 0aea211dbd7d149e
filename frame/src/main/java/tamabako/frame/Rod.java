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

    /// Whether the beads that `stroke` takes from the beam are there.
    boolean canSpare(Stroke stroke) {
        return switch (stroke) {
            case Stroke.Upper(_, Direction direction) ->
                    direction == Direction.TOWARD_BEAM || upper > 0;
            case Stroke.Lower(_, int beads, Direction direction) ->
                    direction == Direction.TOWARD_BEAM || lower >= beads;
        };
    }

    /// This rod after one stroke that it can spare the beads for; whether a frame has the beads
    /// that come is for the frame to say.
    Rod after(Stroke stroke) {
        int sign = stroke.direction().sign();
        return switch (stroke) {
            case Stroke.Upper _ -> new Rod(upper + sign, lower);
            case Stroke.Lower(_, int beads, _) -> new Rod(upper, lower + sign * beads);
        };
    }

    /// This rod after `digit` (0 to 9) more, the sum at most 9: with lower beads where there are
    /// enough, else five with an upper bead and the rest given back.
    Rod adding(int digit) {
        int more = lower + digit % 5;
        return new Rod(upper + digit / 5 + more / 5, more % 5);
    }

    /// This rod after `digit` (0 to 9) less, which it must hold: with the beads that are there,
    /// else five with an upper bead and the rest given back.
    Rod taking(int digit) {
        int ones = lower - digit % 5;
        int fives = upper - digit / 5;
        if (ones < 0) {
            return new Rod(fives - 1, ones + 5);
        }
        // Five lower beads, on a frame that has them, may stand for the upper bead.
        return fives < 0 ? new Rod(0, ones - 5) : new Rod(fives, ones);
    }
}
