package tamabako.problems.setting;

import java.util.Arrays;

/// What may take a seat of a form: of which class it is, and what it adds to the form's totals.
///
/// A class is a sort of seat, such as a mixed column of the second half; a candidate sits only on
/// seats of its class. What the features are is the caller's choice: strokes, seconds, the
/// information of an item, an expected score.
public final class Candidate {

    private final int seatClass;
    private final double[] features;

    private Candidate(int seatClass, double[] features) {
        this.seatClass = seatClass;
        this.features = features;
    }

    /// A candidate for seats of `seatClass`.
    public static Candidate of(int seatClass, double... features) {
        return new Candidate(seatClass, features.clone());
    }

    public int seatClass() {
        return seatClass;
    }

    /// A copy of its features.
    ///
    /// @throws IllegalArgumentException unless there are `count`
    double[] features(int count) {
        if (features.length != count) {
            throw new IllegalArgumentException(
                    "The goal has %d features, not those of %s.".formatted(count, this));
        }
        return features.clone();
    }

    /// Feature `i`, from 0.
    public double feature(int i) {
        return features[i];
    }

    @Override
    public String toString() {
        return "class %d %s".formatted(seatClass, Arrays.toString(features));
    }
}
