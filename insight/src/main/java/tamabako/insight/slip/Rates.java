package tamabako.insight.slip;

import java.util.Arrays;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.function.ToDoubleFunction;

/// How often each kind of slip is made per occasion for it: a carry-left-out per carry, a row
/// skipped per row, a written digit per digit of the answer.
///
/// The shipped rates are assumptions: no count of bead slips has been published. They can be
/// replaced by those of a school or of one pupil, and for the slips of the hand be told apart by
/// [Move].
public final class Rates {

    private static final Rates SHIPPED = read();

    private final double[] kinds;
    private final double[] moves;
    private final double[] slots;

    private Rates(double[] kinds, double[] moves) {
        this.kinds = kinds;
        this.moves = moves;
        this.slots = new double[Slot.COUNT];
        for (int slot = 0; slot < Slot.COUNT; slot++) {
            int move = Slot.moveIndex(slot);
            slots[slot] = kinds[Slot.kindIndex(slot)] * (move < 0 ? 1 : moves[move]);
        }
    }

    /// The rates that ship, from `rates.properties`.
    public static Rates shipped() {
        return SHIPPED;
    }

    /// How often `kind` is made per occasion. For [SlipKind#NONE_KNOWN] it is the share of the
    /// wrong answers that no known slip stands behind.
    public double of(SlipKind kind) {
        return kinds[kind.index()];
    }

    double ofIndex(int kind) {
        return kinds[kind];
    }

    /// How many times as often as usual slips of the hand are made in `move`; 1 as shipped.
    public double factor(Move move) {
        return moves[move.index()];
    }

    /// How often slips of a [Slot] are made per occasion.
    double ofSlot(int slot) {
        return slots[slot];
    }

    /// These rates with one changed.
    ///
    /// @param rate above 0 and below 1
    public Rates with(SlipKind kind, double rate) {
        double[] changed = kinds.clone();
        changed[kind.index()] = checked(kind, rate);
        return new Rates(changed, moves);
    }

    /// These rates with all changed, each to what `rate` gives for its kind: above 0 and below 1.
    public Rates with(ToDoubleFunction<SlipKind> rate) {
        double[] changed = new double[kinds.length];
        for (SlipKind kind : SlipKind.values()) {
            changed[kind.index()] = checked(kind, rate.applyAsDouble(kind));
        }
        return new Rates(changed, moves);
    }

    private static double checked(SlipKind kind, double rate) {
        if (!(rate > 0 && rate < 1)) {
            throw new IllegalArgumentException(
                    "The rate of %s is above 0 and below 1, not %s.".formatted(kind.word(), rate));
        }
        return rate;
    }

    /// These rates with slips in `move` made `factor` times as often as usual.
    ///
    /// @param factor above 0
    public Rates with(Move move, double factor) {
        if (!(factor > 0 && factor < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "The factor of %s is above 0, not %s.".formatted(move.word(), factor));
        }
        double[] changed = moves.clone();
        changed[move.index()] = factor;
        return new Rates(kinds, changed);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Rates same && Arrays.equals(slots, same.slots);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(slots);
    }

    private static Rates read() {
        ResourceBundle file = ResourceBundle.getBundle("tamabako.insight.slip.rates", Locale.ROOT);
        double[] moves = new double[Move.values().length];
        Arrays.fill(moves, 1);
        Rates rates = new Rates(new double[SlipKind.values().length], moves);
        for (SlipKind kind : SlipKind.values()) {
            rates = rates.with(kind, Double.parseDouble(file.getString(kind.word())));
        }
        return rates;
    }
}
