package tamabako.insight.mastery;

/// How far pupils differ in how often they slip: standard deviations of natural logarithms.
///
/// @param general of a pupil's carefulness, which counts for all slips alike
/// @param hand of a pupil's hand, which counts for all moves alike
/// @param move of a pupil's skill in one move
/// @param kind of a pupil's tendency to one kind of slip that belongs to no move
public record Spread(double general, double hand, double move, double kind) {

    /// An assumption: no count of bead slips by pupil has been published.
    public static final Spread USUAL = new Spread(0.3, 0.3, 0.85, 0.5);

    public Spread {
        if (!(general >= 0 && hand >= 0 && move > 0 && kind > 0)) {
            throw new IllegalArgumentException(
                    "Pupils differ: general %s, hand %s, move %s, kind %s."
                            .formatted(general, hand, move, kind));
        }
    }
}
