package tamabako.problems.setting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;

/// Sums that were set already. A sum is the same whatever it is named, told or answered under, and
/// however many zeros end its decimals.
final class Sums {

    private final Set<Sum> seen = new HashSet<>();
    private final List<Problem> problems = new ArrayList<>();

    private record Sum(String kind, List<BigDecimal> numbers) {}

    /// Nothing yet.
    Sums() {}

    /// These.
    Sums(Collection<? extends Problem> problems) {
        problems.forEach(this::add);
    }

    /// The same ones, to be added to apart.
    Sums copy() {
        Sums copied = new Sums();
        copied.seen.addAll(seen);
        copied.problems.addAll(problems);
        return copied;
    }

    /// Adds the sum of `problem`; whether it is new.
    boolean add(Problem problem) {
        return seen.add(of(problem)) && problems.add(problem);
    }

    boolean contains(Problem problem) {
        return seen.contains(of(problem));
    }

    /// The same as makers take it.
    Set<Problem> asSet() {
        return Set.copyOf(problems);
    }

    private static Sum of(Problem problem) {
        List<BigDecimal> numbers =
                switch (problem) {
                    case Column column -> column.rows();
                    case Product product -> List.of(product.multiplicand(), product.multiplier());
                    case Quotient quotient -> List.of(quotient.dividend(), quotient.divisor());
                    case Root root -> List.of(BigDecimal.valueOf(root.degree()), root.of());
                };
        return new Sum(
                problem.kind(), numbers.stream().map(BigDecimal::stripTrailingZeros).toList());
    }
}
