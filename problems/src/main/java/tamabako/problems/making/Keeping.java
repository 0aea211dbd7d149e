package tamabako.problems.making;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import tamabako.problems.Problem;
import tamabako.problems.Quotient;
import tamabako.problems.effort.Effort;

/// Whether problems keep a custom.
final class Keeping {

    private Keeping() {}

    /// Whether a problem alone keeps `custom`; the customs of whole sets are kept by every problem.
    static boolean isKept(Custom custom, Problem problem) {
        return !(custom instanceof Custom.NoTies) || Rounded.of(problem) != Rounded.TIE;
    }

    /// Whether the set keeps `custom`.
    static boolean isKept(Custom custom, List<Problem> set) {
        return switch (custom) {
            case Custom.NoTies _ -> set.stream().allMatch(problem -> isKept(custom, problem));
            case Custom.BothRoundings(int up, int down) ->
                    has(set, up, problem -> Rounded.of(problem) == Rounded.UP)
                            && has(set, down, problem -> Rounded.of(problem) == Rounded.DOWN);
            case Custom.SomeShort _ -> has(set, 1, Look::isShort);
            case Custom.InnerZeros(int least, int most) -> {
                long zeros = set.stream().filter(Look::hasInnerZero).count();
                yield zeros >= least && zeros <= most;
            }
            case Custom.Revised(int least) -> has(set, least, Keeping::isRevised);
            case Custom.EvenDigits _ -> areEven(set);
            case Custom.FewLeadingOnes _ -> hasFewLeadingOnes(set);
            case Custom.DifferentFirstDigits _ -> areDifferent(set);
            case Custom.EvenSplits _ -> true; // So the splits are dealt.
        };
    }

    private static boolean has(List<Problem> set, int least, Predicate<Problem> what) {
        return set.stream().filter(what).limit(least).count() == least;
    }

    private static boolean isRevised(Problem problem) {
        return problem instanceof Quotient quotient && Effort.firstRevisions(quotient) > 0;
    }

    private static boolean areEven(List<Problem> set) {
        int[] counts = new int[10];
        set.forEach(problem ->
                Look.multiplier(problem).chars().forEach(figure -> counts[figure - '0']++));
        double mean = IntStream.rangeClosed(2, 9).map(digit -> counts[digit]).average().orElse(0);
        double off = Math.max(2, mean / 2);
        return IntStream.rangeClosed(2, 9).allMatch(digit -> Math.abs(counts[digit] - mean) <= off);
    }

    private static boolean hasFewLeadingOnes(List<Problem> set) {
        List<String> numbers =
                set.stream().flatMap(problem -> Look.numbers(problem).stream()).toList();
        long ones = numbers.stream().filter(figures -> figures.startsWith("1")).count();
        return 5 * ones <= numbers.size();
    }

    private static boolean areDifferent(List<Problem> set) {
        int[] counts = new int[10];
        set.forEach(problem -> counts[Look.answerFigures(problem).charAt(0) - '0']++);
        int most = Math.max(Math.ceilDiv(set.size(), 9) + 1, Math.ceilDiv(set.size(), 5));
        return IntStream.of(counts).allMatch(count -> count <= most);
    }
}
