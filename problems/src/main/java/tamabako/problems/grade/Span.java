package tamabako.problems.grade;

/// Whole numbers from `least` to `most`, both included.
public record Span(int least, int most) {

    public Span {
        if (least < 0 || most < least) {
            throw new IllegalArgumentException(
                    "There is nothing from %d to %d.".formatted(least, most));
        }
    }

    /// This one number.
    public static Span of(int only) {
        return new Span(only, only);
    }

    /// Whether there is just one number.
    public boolean isOne() {
        return least == most;
    }

    public boolean holds(int number) {
        return number >= least && number <= most;
    }

    /// The sums of one number of this and one of `other`.
    public Span plus(Span other) {
        return new Span(least + other.least, most + other.most);
    }

    /// As a file has it: `4` or `3-5`.
    @Override
    public String toString() {
        return isOne() ? Integer.toString(least) : least + "-" + most;
    }
}
