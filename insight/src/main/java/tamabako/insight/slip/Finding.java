package tamabako.insight.slip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// What an answer tells about the slip behind it.
///
/// A wrong answer shows only by how much it is off, and several slips may be off by the same
/// amount; so a finding is a ranking, never a verdict on one place.
///
/// @param right whether the answer is right in value; then there are no slips
/// @param expected the right answer in plain figures
/// @param explained the share of all known slips together, 0 to 1; 1 for a right answer
/// @param slips the likeliest kinds first, [SlipKind#NONE_KNOWN] among them, at most [#MOST_SLIPS];
///   the shares of all kinds sum to 1, each of two slips at once having half, of three a third
/// @param two the likeliest two slips at once, where any two lead to the answer
/// @param three the likeliest three slips at once, where neither one nor two lead to the answer but
///   three do
public record Finding(
        boolean right,
        String expected,
        double explained,
        List<Slip> slips,
        Optional<Together> two,
        Optional<Together> three) {

    /// Some slips in one sum.
    ///
    /// @param kinds the likeliest kinds together, in the order of [SlipKind]; some may be the same
    /// @param share how likely it is that the answer comes of so many slips at once, whichever they
    ///   are, 0 to 1
    public record Together(List<SlipKind> kinds, double share) {

        public Together {
            kinds = List.copyOf(kinds);
        }
    }

    /// The most kinds that are listed.
    public static final int MOST_SLIPS = 12;

    /// A kind is named alone only if its share is at least this ...
    private static final double ENOUGH = 0.5;

    /// ... and at least so many times the share of the second.
    private static final double TIMES_THE_SECOND = 2;

    /// Where no kind is named alone, as many are named as hold this share together.
    private static final double NEARLY_ALL = 0.9;

    public Finding {
        slips = List.copyOf(slips);
    }

    /// A right answer.
    public static Finding right(String expected) {
        return new Finding(true, expected, 1, List.of(), Optional.empty(), Optional.empty());
    }

    /// How sure one may be.
    public enum Verdict {
        /// The answer is right.
        RIGHT,
        /// One kind of slip stands out.
        LIKELY,
        /// Several kinds explain the answer about as well.
        CANNOT_TELL,
        /// More likely than not it is no slip that the finder knows.
        NONE_KNOWN
    }

    /// How sure one may be: a kind is named alone if it holds half of the whole and twice as much
    /// as the second.
    public Verdict verdict() {
        if (right) {
            return Verdict.RIGHT;
        }
        if (explained < ENOUGH) {
            return Verdict.NONE_KNOWN;
        }
        double second = slips.size() > 1 ? slips.get(1).share() : 0;
        boolean standsOut =
                slips.getFirst().share() >= ENOUGH
                        && slips.getFirst().share() >= TIMES_THE_SECOND * second;
        return standsOut ? Verdict.LIKELY : Verdict.CANNOT_TELL;
    }

    /// The kinds between which this answer cannot tell: the fewest, likeliest first, that together
    /// hold nine tenths. Empty unless the verdict is [Verdict#CANNOT_TELL].
    public List<SlipKind> cannotTell() {
        List<SlipKind> kinds = new ArrayList<>();
        if (verdict() != Verdict.CANNOT_TELL) {
            return kinds;
        }
        double together = 0;
        for (Slip slip : slips) {
            if (together >= NEARLY_ALL) {
                break;
            }
            kinds.add(slip.kind());
            together += slip.share();
        }
        return List.copyOf(kinds);
    }
}
