package tamabako.problems.setting;

import java.util.List;
import java.util.Optional;
import tamabako.problems.grade.Format.Answers;
import tamabako.problems.grade.Format.Rounded;
import tamabako.problems.making.Custom;

/// The customs that a set of products or quotients of a paper keeps.
///
/// @param count how many problems
/// @param decimals how many of them have decimals
/// @param isFirst whether it is the first set of its kind in the section
record FactorCustoms(int count, int decimals, boolean isFirst) {

    /// One or two problems of so many in a section have a zero between other digits. Common
    /// practice, no published source.
    private static final int INNER_ZEROS_IN = 20;

    /// Those of the `usual` customs that such a set can keep, as the grade wants them.
    List<Custom> of(List<Custom> usual, Answers answers) {
        return usual.stream().flatMap(custom -> kept(custom, answers).stream()).toList();
    }

    private Optional<Custom> kept(Custom custom, Answers answers) {
        return switch (custom) {
            case Custom.BothRoundings _ ->
                    decimals >= 2 ? Optional.of(roundings(answers)) : Optional.empty();
            case Custom.SomeShort _ -> Optional.of(custom).filter(_ -> decimals >= 3);
            case Custom.Revised(int least) -> Optional.of(custom).filter(_ -> count >= 4 * least);
            case Custom.InnerZeros _ -> Optional.of(innerZeros());
            case Custom.NoTies _,
                    Custom.EvenDigits _,
                    Custom.FewLeadingOnes _,
                    Custom.DifferentFirstDigits _,
                    Custom.EvenSplits _ ->
                    Optional.of(custom);
        };
    }

    private Custom innerZeros() {
        int least = count / INNER_ZEROS_IN;
        int most = 2 * count / INNER_ZEROS_IN;
        return isFirst
                ? new Custom.InnerZeros(Math.max(1, least), Math.max(1, most))
                : new Custom.InnerZeros(least, most);
    }

    private static Custom roundings(Answers answers) {
        Optional<Rounded> rounded = answers.rounded();
        return new Custom.BothRoundings(
                Math.max(1, rounded.map(Rounded::up).orElse(0)),
                Math.max(1, rounded.map(Rounded::down).orElse(0)));
    }
}
