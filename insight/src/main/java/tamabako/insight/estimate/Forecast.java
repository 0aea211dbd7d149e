package tamabako.insight.estimate;

/// What was forecast, and what came.
///
/// @param chance of coming true, 0 to 1
/// @param so whether it came true
public record Forecast(double chance, boolean so) {

    public Forecast {
        if (!(0 <= chance && chance <= 1)) {
            throw new IllegalArgumentException("No chance: " + chance + ".");
        }
    }

    double came() {
        return so ? 1 : 0;
    }
}
