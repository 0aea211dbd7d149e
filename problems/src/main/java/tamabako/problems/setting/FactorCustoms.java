package tamabako.problems.setting;

import java.util.List;
import java.util.Optional;
import tamabako.problems.grade.Format.Answers;
import tamabako.problems.grade.Format.Rounded;
import tamabako.problems.making.Custom;

/// What a set of products or quotients keeps to besides [FactorBalance].
///
/// @param up how many answers at least are rounded up
/// @param down how many lose decimals and are rounded down, at least
/// @param exact how many with decimals have an exact answer of fewer places, at least
/// @param revised in how many quotients the first trial digit has to be revised, at least
record FactorCustoms(int up, int down, int exact, int revised) {

    /// Nothing.
    static final FactorCustoms NONE = new FactorCustoms(0, 0, 0, 0);

    /// Fewer decimals leave no room for one answer of each sort.
    private static final int DECIMALS_FOR_ALL = 3;

    /// Of so many quotients one is revised, where a custom asks for revised ones at all.
    private static final int REVISED_ONE_OF = 4;

    /// What of the `usual` customs a set of `count` problems can keep, `decimals` of them with
    /// decimals, and what the grade asks.
    static FactorCustoms of(List<Custom> usual, Answers answers, int decimals, int count) {
        Optional<Rounded> rounded = answers.rounded();
        int both = decimals >= 2 ? 1 : 0;
        boolean isExact = usual.contains(new Custom.SomeShort()) && decimals >= DECIMALS_FOR_ALL;
        return new FactorCustoms(
                Math.max(both, rounded.map(Rounded::up).orElse(0)),
                Math.max(both, rounded.map(Rounded::down).orElse(0)),
                isExact ? 1 : 0,
                Math.min(revised(usual), count / REVISED_ONE_OF));
    }

    private static int revised(List<Custom> usual) {
        return usual.stream()
                .mapToInt(custom -> custom instanceof Custom.Revised(int least) ? least : 0)
                .sum();
    }

    /// How many problems of a sort the set has too few of; 0 where it has enough of each.
    int missed(List<FactorBalance.Look> set) {
        return lacking(up, set, " up")
                + lacking(down, set, " down")
                + lacking(exact, set, " short")
                + lacking(revised, set, " revised");
    }

    private static int lacking(int least, List<FactorBalance.Look> set, String word) {
        int there = 0;
        for (FactorBalance.Look look : set) {
            there += least > 0 && look.sort().contains(word) ? 1 : 0;
        }
        return Math.max(0, least - there);
    }
}
