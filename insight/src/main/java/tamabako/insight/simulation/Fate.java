package tamabako.insight.simulation;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
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
    /// @param weight how many occasions of its kind it is worth
    public record Occasion(SlipKind kind, int row, int rod, double weight) {}

    /// Stands for no rod.
    public static final int NO_ROD = -100;

    private final boolean anywhere;
    private final BitSet fatal;
    private final Rates rates;
    private final SplittableRandom chance;
    private final Habit habit;
    private final List<Occasion> occasions = new ArrayList<>();
    private final Set<SlipKind> fallen = EnumSet.noneOf(SlipKind.class);
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
        boolean falls;
        if (anywhere) {
            falls = chance.nextDouble() < weight * rates.of(kind);
        } else {
            occasions.add(new Occasion(kind, row, rod, weight));
            falls = fatal.get(occasions.size() - 1);
        }
        if (falls) {
            fallen.add(kind);
            slips++;
        }
        return falls;
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
