package tamabako.insight.slip;

import java.util.Collection;

/// Numbers of slips, or of occasions for them, by kind and by move of the hand. They need not be
/// whole: half a slip is one that was made with chance one half.
public final class Counts {

    private final double[] kinds;
    private final double[] moves;

    Counts(double[] kinds, double[] moves) {
        this.kinds = kinds;
        this.moves = moves;
    }

    /// Nothing.
    public static Counts none() {
        return new Counts(new double[SlipKind.values().length], new double[Move.values().length]);
    }

    /// The number of slips of `kind`, or of occasions for it.
    public double of(SlipKind kind) {
        return kinds[kind.index()];
    }

    /// The number of slips of the hand in `move`, or of steps by it.
    public double of(Move move) {
        return moves[move.index()];
    }

    /// All of them together.
    public static Counts sum(Collection<Counts> counts) {
        Counts sum = none();
        for (Counts one : counts) {
            sum.add(one);
        }
        return sum;
    }

    private void add(Counts other) {
        for (int i = 0; i < kinds.length; i++) {
            kinds[i] += other.kinds[i];
        }
        for (int i = 0; i < moves.length; i++) {
            moves[i] += other.moves[i];
        }
    }
}
