package tamabako.frame;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/// A frame at rest: every rod, from `lowest` upward. Rod 0 is the unit rod, rod -1 holds tenths.
///
/// A `Frame` never changes. A stroke makes the next one.
public record Frame(FrameKind kind, int lowest, List<Rod> rods) {

    /// The most rods a frame may have.
    public static final int MOST_RODS = 31;

    public Frame {
        rods = List.copyOf(rods);
        if (rods.isEmpty() || rods.size() > MOST_RODS) {
            throw new IllegalArgumentException(
                    "A frame has 1 to %d rods, not %d.".formatted(MOST_RODS, rods.size()));
        }
        for (Rod rod : rods) {
            if (!kind.holds(rod)) {
                throw new IllegalArgumentException("A %s has no rod like %s.".formatted(kind, rod));
            }
        }
    }

    /// A cleared frame whose rods are numbered from `lowest` up to `highest`.
    public static Frame clear(FrameKind kind, int lowest, int highest) {
        return new Frame(kind, lowest, Collections.nCopies(highest - lowest + 1, Rod.CLEAR));
    }

    /// The number of the leftmost rod.
    public int highest() {
        return lowest + rods.size() - 1;
    }

    /// Whether the frame has a rod of this number.
    public boolean has(int rod) {
        return rod >= lowest && rod <= highest();
    }

    /// The rod that holds `10^number`; it must be there.
    public Rod rod(int number) {
        if (!has(number)) {
            throw new IllegalArgumentException(
                    "This frame has rods %d to %d, not %d.".formatted(lowest, highest(), number));
        }
        return rods.get(number - lowest);
    }

    /// What the whole frame reads: the count of each rod times its power of ten.
    public BigDecimal value() {
        return value(lowest, highest());
    }

    /// What the rods from `from` up to `to`, both included, read. Rods that the frame lacks count
    /// nothing.
    public BigDecimal value(int from, int to) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int number = Math.max(from, lowest); number <= Math.min(to, highest()); number++) {
            sum = sum.add(BigDecimal.valueOf(rod(number).value()).scaleByPowerOfTen(number));
        }
        return sum;
    }

    /// What a hand gets that tries `stroke` here. Refusal is an answer, not an error.
    public Played play(Stroke stroke) {
        if (!has(stroke.rod())) {
            return new Played.Refused(stroke, Played.Because.NO_SUCH_ROD);
        }
        Rod before = rod(stroke.rod());
        if (!before.canSpare(stroke)) {
            return new Played.Refused(stroke, Played.Because.NO_BEAD_AT_THE_BEAM);
        }
        Rod after = before.after(stroke);
        if (!kind.holds(after)) {
            return new Played.Refused(stroke, Played.Because.NO_BEAD_LEFT_TO_BRING);
        }
        return new Played.Moved(with(stroke.rod(), after));
    }

    /// This frame with one rod changed.
    public Frame with(int number, Rod rod) {
        rod(number);
        List<Rod> changed = new ArrayList<>(rods);
        changed.set(number - lowest, rod);
        return new Frame(kind, lowest, changed);
    }

    /// The counts of the rods from the left, one character each: digits, and `A` to `F` for ten to
    /// fifteen on frames with more beads.
    public String digits() {
        StringBuilder digits = new StringBuilder(rods.size());
        for (Rod rod : rods.reversed()) {
            digits.append(Character.toUpperCase(Character.forDigit(rod.value(), 16)));
        }
        return digits.toString();
    }
}
