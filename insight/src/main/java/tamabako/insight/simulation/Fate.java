package tamabako.insight.simulation;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipKind;

/// Decides where a simulated pupil slips: nowhere, at some occasions, or wherever chance has it.
///
/// For one slip, a first run without any notes every occasion; one is drawn by its chance, and a
/// second run slips there.
public final class Fate {

    /// A slip that could have been made.
    ///
    /// @param row the row of a column, 0 elsewhere
    /// @param rod the rod or place, [#NO_ROD] where there is none
    /// @param weight how many occasions of its kind it is worth, and how many times as often as
    ///   usual the pupil slips in the move that it belongs to
    /// @param move the move that it belongs to; empty for a slip that is not of the hand
    public record Occasion(SlipKind kind, int row, int rod, double weight, Optional<Move> move) {

        /// One that belongs to no move.
        public Occasion(SlipKind kind, int row, int rod, double weight) {
            this(kind, row, rod, weight, Optional.empty());
        }
    }

    /// Stands for no rod.
    public static final int NO_ROD = -100;

    private final boolean anywhere;
    private final BitSet fatal;
    private final Rates rates;
    private final SplittableRandom chance;
    private final Habit habit;
    private final List<Occasion> occasions = new ArrayList<>();
    private final Set<SlipKind> fallen = EnumSet.noneOf(SlipKind.class);
    private final Map<Move, Integer> slipsIn = new EnumMap<>(Move.class);
    private final Map<Move, Integer> stepsBy = new EnumMap<>(Move.class);
    private int slips;

    private Fate(
            boolean anywhere, BitSet fatal, Rates rates, SplittableRandom chance, Habit habit) {
        this.anywhere = anywhere;
        this.fatal = fatal;
        this.rates = rates;
        this.chance = chance;
        this.habit = habit;
    }

    /// No slip at all.
    public static Fate kind() {
        return at();
    }

    /// Slips at the occasions of these numbers; after the first slip they are counted as they then
    /// come.
    public static Fate at(int... occasions) {
        BitSet fatal = new BitSet();
        for (int occasion : occasions) {
            fatal.set(occasion);
        }
        return new Fate(false, fatal, Rates.shipped(), new SplittableRandom(0), Habit.NONE);
    }

    /// Slips by these rates, as many as chance has it, of a pupil with this habit.
    public static Fate by(Rates rates, SplittableRandom chance, Habit habit) {
        return new Fate(true, new BitSet(), rates, chance, habit);
    }

    /// Whether the pupil slips here, which happens with `weight` times the rate of `kind`.
    boolean falls(SlipKind kind, int row, int rod, double weight) {
        return falls(kind, row, rod, weight, Optional.empty());
    }

    private boolean falls(SlipKind kind, int row, int rod, double weight, Optional<Move> move) {
        boolean falls;
        if (anywhere) {
            falls = chance.nextDouble() < weight * rates.of(kind);
        } else {
            occasions.add(new Occasion(kind, row, rod, weight, move));
            falls = fatal.get(occasions.size() - 1);
        }
        if (falls) {
            fallen.add(kind);
            slips++;
        }
        return falls;
    }

    /// The same for a slip of the hand in `move`.
    boolean falls(SlipKind kind, int row, int rod, double weight, Move move) {
        boolean falls = falls(kind, row, rod, weight * rates.factor(move), Optional.of(move));
        if (falls) {
            slipsIn.merge(move, 1, Integer::sum);
        }
        return falls;
    }

    /// The hand begins a step by `move`.
    void steps(Move move) {
        stepsBy.merge(move, 1, Integer::sum);
    }

    /// Whether the pupil follows a wrong rule where it applies.
    boolean follows() {
        return habit.followed() > 0 && chance.nextDouble() < habit.followed();
    }

    Habit habit() {
        return habit;
    }

    /// The occasions that were met, unless slips are made by chance.
    public List<Occasion> occasions() {
        return occasions;
    }

    /// The kinds of slip that were made.
    public Set<SlipKind> fallen() {
        return fallen;
    }

    /// How many slips of the hand were made in `move`.
    public int slipsIn(Move move) {
        return slipsIn.getOrDefault(move, 0);
    }

    /// How many steps the hand began by `move`, right or wrong.
    public int stepsBy(Move move) {
        return stepsBy.getOrDefault(move, 0);
    }

    /// How many slips were made.
    public int slips() {
        return slips;
    }

    /// The number of an occasion, drawn by their chances under `rates`.
    ///
    /// @param drawn from 0 to below 1
    public static int draw(List<Occasion> occasions, Rates rates, double drawn) {
        double all = 0;
        for (Occasion occasion : occasions) {
            all += occasion.weight() * rates.of(occasion.kind());
        }
        double left = all * drawn;
        for (int i = 0; i < occasions.size(); i++) {
            left -= occasions.get(i).weight() * rates.of(occasions.get(i).kind());
            if (left < 0) {
                return i;
            }
        }
        return occasions.size() - 1;
    }
}
