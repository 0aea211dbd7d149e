package tamabako.insight.readiness;

/// How pupils differ: in how often they slip, and in how long they take.
///
/// All figures are of natural logarithms, so that a spread of .7 says: one pupil in six slips twice
/// as often as usual, or more.
///
/// @param slips how often they slip, against the rates of pupils in general
/// @param pace how long they take, against the times of pupils in general
/// @param problem the spread of one pupil's times for equal problems, above 0
public record Variety(Trait slips, Trait pace, double problem) {

    /// What is taken where nothing was learned. All of it is assumed: no spreads have been
    /// published. Fields of one pupil are taken to differ widely, for the rates and times of pupils
    /// in general are assumptions as well, and may be off more in one field than in another.
    public static final Variety USUAL =
            new Variety(new Trait(0, 0.9, 0.6, 0.35), new Trait(0, 0.4, 0.3, 0.07), 0.25);

    public Variety {
        if (!(problem > 0)) {
            throw new IllegalArgumentException("Times spread by more than 0, not " + problem + ".");
        }
    }

    /// One way in which pupils differ.
    ///
    /// @param mean where the pupils are in the mean; 0 is as pupils in general
    /// @param shared the spread between pupils that shows in all their work, above 0
    /// @param own the spread between the fields of one pupil, above 0
    /// @param day the spread between the days of one pupil, above 0
    public record Trait(double mean, double shared, double own, double day) {

        public Trait {
            if (!(shared > 0 && own > 0 && day > 0)) {
                throw new IllegalArgumentException(
                        "Spreads are above 0, not %s, %s and %s.".formatted(shared, own, day));
            }
        }
    }
}
