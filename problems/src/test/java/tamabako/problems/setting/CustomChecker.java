package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;

/// Checks what setters of papers keep to in a stretch as a whole. Common practice, no published
/// source.
final class CustomChecker {

    private final List<Problem> problems;
    private final Complaints complaints = new Complaints();

    private CustomChecker(List<Problem> problems) {
        this.problems = problems;
    }

    /// What a stretch of columns breaks.
    static List<String> ofColumns(List<Column> columns) {
        CustomChecker checker = new CustomChecker(List.copyOf(columns));
        checker.rowDigits(columns);
        checker.firstDigits(Math.max(2, columns.size() / 5));
        return checker.complaints.all();
    }

    /// What a stretch of products or quotients breaks.
    static List<String> ofFactors(List<Problem> factors) {
        CustomChecker checker = new CustomChecker(factors);
        checker.firstDigits((factors.size() + 8) / 9 + 1);
        checker.multiplierDigits();
        checker.leadingOnes();
        return checker.complaints.all();
    }

    /// What a section of products or quotients breaks: one or two of twenty have a zero between
    /// other digits.
    static List<String> ofSection(List<Problem> section) {
        CustomChecker checker = new CustomChecker(section);
        checker.innerZeros();
        return checker.complaints.all();
    }

    private void rowDigits(List<Column> columns) {
        int[] counts = new int[10];
        int rows = 0;
        for (Column column : columns) {
            for (var row : column.rows()) {
                DigitCount.of(row).chars().forEach(digit -> counts[digit - '0']++);
                rows++;
            }
        }
        int all = IntStream.of(counts).sum();
        double zeros = (all - rows) / 10.0;
        for (int digit = 0; digit <= 9; digit++) {
            double expected = digit == 0 ? zeros : (all - zeros) / 9;
            complaints.unless(
                    Math.abs(counts[digit] - expected) <= Math.max(2, 0.15 * expected) + 1e-9,
                    "digit",
                    digit,
                    "stands",
                    counts[digit],
                    "times instead of",
                    expected);
        }
    }

    private void firstDigits(int most) {
        int[] counts = new int[10];
        problems.forEach(
                problem -> counts[DigitCount.of(problem.answer().value()).charAt(0) - '0']++);
        for (int digit = 0; digit <= 9; digit++) {
            complaints.unless(counts[digit] <= most, counts[digit], "answers begin with", digit);
        }
    }

    private void multiplierDigits() {
        int[] counts = new int[10];
        pairs().forEach(pair -> pair.get(1).chars().forEach(digit -> counts[digit - '0']++));
        double mean = IntStream.rangeClosed(2, 9).map(digit -> counts[digit]).sum() / 8.0;
        for (int digit = 2; digit <= 9; digit++) {
            complaints.unless(
                    Math.abs(counts[digit] - mean) <= Math.max(2, mean / 2),
                    "multiplied",
                    counts[digit],
                    "times by",
                    digit);
        }
    }

    private void leadingOnes() {
        long ones =
                pairs().stream()
                        .flatMap(List::stream)
                        .filter(figures -> figures.startsWith("1"))
                        .count();
        complaints.unless(5 * ones <= 2L * problems.size(), ones, "numbers begin with 1");
    }

    private void innerZeros() {
        long zeros =
                problems.stream()
                        .filter(problem -> problem instanceof Product)
                        .map(CustomChecker::pair)
                        .filter(pair -> (pair.get(0) + pair.get(1)).contains("0"))
                        .count();
        zeros +=
                problems.stream()
                        .filter(problem -> problem instanceof Quotient)
                        .filter(problem ->
                                pair(problem).get(1).replaceFirst("0+$", "").contains("0"))
                        .count();
        boolean could = pairs().stream().anyMatch(pair -> pair.get(1).length() >= 3);
        complaints.unless(
                zeros <= Math.max(2, problems.size() / 10), zeros, "numbers with an inner zero");
        complaints.unless(zeros >= 1 || !could, "no number with an inner zero");
    }

    private List<List<String>> pairs() {
        List<List<String>> pairs = new ArrayList<>();
        problems.forEach(problem -> pairs.add(pair(problem)));
        return pairs;
    }

    /// The digits of both factors, or of divisor and quotient.
    private static List<String> pair(Problem problem) {
        return switch (problem) {
            case Product product ->
                    List.of(
                            DigitCount.of(product.multiplicand()),
                            DigitCount.of(product.multiplier()));
            case Quotient quotient ->
                    List.of(
                            DigitCount.of(quotient.divisor()),
                            DigitCount.shortest(quotient.answer().value()));
            default -> throw new IllegalArgumentException("No factors: " + problem);
        };
    }
}
