package tamabako.frame;

/// Which finger moves which bead (unshihō).
public enum Fingering {
    /// Thumb: lower beads up. Forefinger: lower beads down, upper bead both ways (nishihō).
    ///
    /// Source: Kojima, The Japanese Abacus (1954).
    TWO_FINGERS,
    /// Thumb: upper bead. Forefinger: lower beads.
    ///
    /// Source: Japanese Wikibooks on shuzan; other sources do not agree, so it is never the
    /// default.
    THUMB_ON_UPPER,
    /// One forefinger for every bead (isshihō).
    ///
    /// Common practice, no published source.
    ONE_FINGER,
    /// Thumb: lower beads up. Forefinger: lower beads down. Middle finger: upper beads.
    ///
    /// Source: Chinese primers on the suanpan.
    THREE_FINGERS;

    /// The finger that makes `stroke`.
    public Finger finger(Stroke stroke) {
        return switch (this) {
            case ONE_FINGER -> Finger.FOREFINGER;
            case TWO_FINGERS -> thumbOnLowerRising(stroke, Finger.FOREFINGER);
            case THREE_FINGERS -> thumbOnLowerRising(stroke, Finger.MIDDLE_FINGER);
            case THUMB_ON_UPPER ->
                    switch (stroke) {
                        case Stroke.Upper _ -> Finger.THUMB;
                        case Stroke.Lower _ -> Finger.FOREFINGER;
                    };
        };
    }

    private static Finger thumbOnLowerRising(Stroke stroke, Finger onUpper) {
        return switch (stroke) {
            case Stroke.Upper _ -> onUpper;
            case Stroke.Lower(_, _, Direction direction) ->
                    direction == Direction.TOWARD_BEAM ? Finger.THUMB : Finger.FOREFINGER;
        };
    }
}
