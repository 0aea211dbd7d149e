package tamabako.insight.slip;

import java.util.Arrays;
import java.util.Locale;
import java.util.ResourceBundle;

/// How often each kind of slip is made per occasion for it: a carry-left-out per carry, a row
/// skipped per row, a written digit per digit of the answer.
///
/// The shipped rates are assumptions: no count of bead slips has been published. They can be
/// replaced by those of a school or of one pupil.
public final class Rates {

    private static final Rates SHIPPED = read();

    private final double[] rates;

    private Rates(double[] rates) {
        this.rates = rates;
    }

    /// The rates that ship, from `rates.properties`.
    public static Rates shipped() {
        return SHIPPED;
    }

    /// How often `kind` is made per occasion. For [SlipKind#NONE_KNOWN] it is the share of the
    /// wrong answers that no known slip stands behind.
    public double of(SlipKind kind) {
        return rates[kind.index()];
    }

    /// These rates with one changed.
    ///
    /// @param rate above 0 and below 1
    public Rates with(SlipKind kind, double rate) {
        if (!(rate > 0 && rate < 1)) {
            throw new IllegalArgumentException(
                    "The rate of %s is above 0 and below 1, not %s.".formatted(kind.word(), rate));
        }
        double[] changed = rates.clone();
        changed[kind.index()] = rate;
        return new Rates(changed);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Rates same && Arrays.equals(rates, same.rates);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(rates);
    }

    private static Rates read() {
        ResourceBundle file = ResourceBundle.getBundle("tamabako.insight.slip.rates", Locale.ROOT);
        Rates rates = new Rates(new double[SlipKind.values().length]);
        for (SlipKind kind : SlipKind.values()) {
            rates = rates.with(kind, Double.parseDouble(file.getString(kind.word())));
        }
        return rates;
    }
}
