package tamabako.insight.mastery;

/// How much less an answer says with every day that has passed since.
///
/// @param daily what is left after a day, above 0 and at most 1
public record Forgetting(double daily) {

    /// Half is left after 46 days. A choice: on simulated pupils answers hardly tell which value is
    /// right.
    public static final Forgetting USUAL = new Forgetting(0.985);

    /// Nothing is forgotten.
    public static final Forgetting NONE = new Forgetting(1);

    public Forgetting {
        if (!(daily > 0 && daily <= 1)) {
            throw new IllegalArgumentException(
                    "What is left after a day is above 0 and at most 1, not %s.".formatted(daily));
        }
    }

    /// What is left after so many days, 0 or more.
    public double left(long days) {
        return Math.pow(daily, (double) days);
    }
}
