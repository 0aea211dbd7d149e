package tamabako.problems.setting;

import java.util.List;
import java.util.stream.Stream;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;

/// How far a set of products or quotients is from what setters of papers keep to, as
/// [tamabako.problems.making.Custom] has it: even digits, few leading ones, different first digits.
/// What their sorts tell is not looked at again.
final class FactorBalance {

    private FactorBalance() {}

    /// What is looked at in one product or quotient.
    static final class Look {

        private final String sort;
        private final int[] multiplier = new int[10];
        private final int lead;
        private final int ones;

        Look(Problem problem) {
            sort = FactorSort.of(problem);
            String answer = FactorSort.figures(problem.answer().value());
            String first =
                    switch (problem) {
                        case Product product -> FactorSort.figures(product.multiplicand());
                        case Quotient quotient -> FactorSort.figures(quotient.divisor());
                        default -> answer;
                    };
            String second =
                    problem instanceof Product product
                            ? FactorSort.figures(product.multiplier())
                            : answer;
            second.chars().forEach(figure -> multiplier[figure - '0']++);
            lead = answer.charAt(0) - '0';
            ones = (int) Stream.of(first, second).filter(one -> one.startsWith("1")).count();
        }

        /// Its sort, in words.
        String sort() {
            return sort;
        }
    }

    /// What the set misses of the customs; 0 where it keeps them.
    static double missed(List<Look> set) {
        int[] digits = new int[10];
        int[] leads = new int[10];
        int ones = 0;
        for (Look look : set) {
            for (int digit = 0; digit < 10; digit++) {
                digits[digit] += look.multiplier[digit];
            }
            leads[look.lead]++;
            ones += look.ones;
        }
        double missed = Math.max(0, 5 * ones - 2 * set.size());
        int most = Math.ceilDiv(set.size(), 9) + 1;
        for (int count : leads) {
            missed += Math.max(0, count - most);
        }
        return missed + uneven(digits);
    }

    private static double uneven(int[] digits) {
        double mean = 0;
        for (int digit = 2; digit < 10; digit++) {
            mean += digits[digit] / 8.0;
        }
        double free = Math.max(2, mean / 2);
        double missed = 0;
        for (int digit = 2; digit < 10; digit++) {
            missed += Math.max(0, Math.abs(digits[digit] - mean) - free);
        }
        return missed;
    }
}
