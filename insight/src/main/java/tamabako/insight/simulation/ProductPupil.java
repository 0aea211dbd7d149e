package tamabako.insight.simulation;

import java.util.OptionalLong;
import tamabako.insight.slip.SlipKind;

/// A simulated pupil who multiplies two whole numbers, the multiplicand's last digit first, and
/// slips where fate will have it.
public final class ProductPupil {

    private final Fate fate;
    private final BeadFrame frame;
    private final TableMemory table;

    private ProductPupil(Fate fate) {
        this.fate = fate;
        this.frame = new BeadFrame(fate);
        this.table = new TableMemory(fate);
    }

    /// What the pupil writes; nothing if the beads run out on the way.
    public static OptionalLong writes(long multiplicand, long multiplier, Fate fate) {
        ProductPupil pupil = new ProductPupil(fate);
        try {
            OperandReader reader = new OperandReader(fate);
            long first = reader.sets(multiplicand);
            long second = reader.sets(multiplier);
            for (int place = 0; place < Long.toString(first).length(); place++) {
                pupil.multiply(digit(first, place), Long.toString(second), place);
            }
        } catch (BeadFrame.Stuck _) {
            return OptionalLong.empty();
        }
        return OptionalLong.of(new Pencil(fate).writes(pupil.frame.read()));
    }

    private static int digit(long number, int place) {
        String figures = Long.toString(number);
        return figures.charAt(figures.length() - 1 - place) - '0';
    }

    private void multiply(int digit, String multiplier, int place) {
        if (digit == 0) {
            return;
        }
        int shift = 0;
        if (multiplier.length() > 1) {
            if (fate.falls(SlipKind.PRODUCT_SKIPPED, 0, place, 0.5)) {
                return;
            }
            if (fate.falls(SlipKind.PRODUCT_MISPLACED, 0, place, 0.25)) {
                shift = 1;
            } else if (place > 0 && fate.falls(SlipKind.PRODUCT_MISPLACED, 0, place, 0.25)) {
                shift = -1;
            }
        }
        for (int at = 0; at < multiplier.length(); at++) {
            int rod = place + multiplier.length() - 1 - at;
            partial(digit, multiplier.charAt(at) - '0', rod, rod + shift);
        }
    }

    private void partial(int first, int second, int rod, int units) {
        int product = table.recalls(first, second, rod);
        int at = units;
        if (second > 0) {
            if (fate.falls(SlipKind.PRODUCT_SKIPPED, 0, rod, 1)) {
                return;
            }
            if (fate.falls(SlipKind.PRODUCT_MISPLACED, 0, rod, product < 10 ? 1.5 : 0.5)) {
                at++;
            } else if (rod > 0 && fate.falls(SlipKind.PRODUCT_MISPLACED, 0, rod, 0.5)) {
                at--;
            }
        }
        frame.add(0, at + 1, product / 10);
        frame.add(0, at, product % 10);
    }
}
