package tamabako.problems.setting;

import java.util.List;
import java.util.Optional;
import tamabako.problems.grade.Format.Answers;
import tamabako.problems.grade.Format.Rounded;
import tamabako.problems.making.Custom;

/// What a set of products or quotients keeps to.
///
/// @param up how many answers at least are rounded up
/// @param down how many lose decimals and are rounded down, at least
/// @param exact how many with decimals have an exact answer of fewer places, at least
/// @param revised in how many quotients the first trial digit has to be revised, at least
/// @param isBalanced whether the set keeps [FactorBalance] as well
record FactorCustoms(int up, int down, int exact, int revised, boolean isBalanced) {

    /// Fewer decimals leave no room for one answer of each sort.
    private static final int DECIMALS_FOR_ALL = 3;

    /// Of so many quotients one is revised, where a custom asks for revised ones at all.
    private static final int REVISED_ONE_OF = 4;

    /// The balance alone, if customs are kept.
    static FactorCustoms balance(SettersCustoms kept) {
        return new FactorCustoms(0, 0, 0, 0, kept == SettersCustoms.KEPT);
    }

    /// What of the `usual` customs a set of `count` problems can keep, `decimals` of them with
    /// decimals, and what the grade asks. Without usual customs only that remains.
    static FactorCustoms of(List<Custom> usual, Answers answers, int decimals, int count) {
        Optional<Rounded> rounded = answers.rounded();
        boolean isBoth = usual.stream().anyMatch(Custom.BothRoundings.class::isInstance);
        int both = isBoth && decimals >= 2 ? 1 : 0;
        boolean isExact = usual.contains(new Custom.SomeShort()) && decimals >= DECIMALS_FOR_ALL;
        return new FactorCustoms(
                Math.max(both, rounded.map(Rounded::up).orElse(0)),
                Math.max(both, rounded.map(Rounded::down).orElse(0)),
                isExact ? 1 : 0,
                Math.min(revised(usual), count / REVISED_ONE_OF),
                !usual.isEmpty());
    }

    private static int revised(List<Custom> usual) {
        return usual.stream()
                .mapToInt(custom -> custom instanceof Custom.Revised(int least) ? least : 0)
                .sum();
    }

    /// What the set misses of the balance; 0 where it keeps it, or need not.
    double unbalanced(List<FactorBalance.Look> set) {
        return isBalanced ? FactorBalance.missed(set) : 0;
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
