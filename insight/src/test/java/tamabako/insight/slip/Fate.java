package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import tamabako.testkit.Draw;

/// Decides where a simulated pupil slips: at one occasion, or at none.
///
/// A first run without a slip notes every occasion; one is drawn by its chance, and a second run
/// slips there.
final class Fate {

    /// A slip that could have been made.
    ///
    /// @param row the row of a column, 0 elsewhere
    /// @param rod the rod or place, [#NO_ROD] where there is none
    record Occasion(SlipKind kind, int row, int rod, double chance) {

        /// Whether the finder lists this slip, at this place, for what was written.
        boolean isAmong(EventTable table, long written) {
            for (int i : table.leadingTo(BigDecimal.valueOf(written))) {
                long code = table.events().code(i);
                boolean sameRow =
                        row == (Code.where(code) instanceof Where.Row(int number) ? number : 0);
                boolean sameRod = rod == NO_ROD || Code.rod(code).equals(OptionalInt.of(rod));
                if (Code.way(code).kind() == kind && sameRow && sameRod) {
                    return table.events().weight(i) > 0;
                }
            }
            return false;
        }
    }

    static final int NO_ROD = -100;

    private final int fatal;
    private final List<Occasion> occasions = new ArrayList<>();

    private Fate(int fatal) {
        this.fatal = fatal;
    }

    /// No slip at all.
    static Fate kind() {
        return new Fate(-1);
    }

    /// A slip at the occasion of this number.
    static Fate at(int occasion) {
        return new Fate(occasion);
    }

    /// Whether the pupil slips here, which happens with `weight` times the shipped rate.
    boolean falls(SlipKind kind, int row, int rod, double weight) {
        occasions.add(new Occasion(kind, row, rod, weight * Rates.shipped().of(kind)));
        return occasions.size() - 1 == fatal;
    }

    List<Occasion> occasions() {
        return occasions;
    }

    /// The number of an occasion, drawn by their chances.
    static int draw(List<Occasion> occasions, Draw draw) {
        double all = occasions.stream().mapToDouble(Occasion::chance).sum();
        double left = all * draw.between(0, 1 << 30) / (1 << 30);
        for (int i = 0; i < occasions.size(); i++) {
            left -= occasions.get(i).chance();
            if (left < 0) {
                return i;
            }
        }
        return occasions.size() - 1;
    }
}
