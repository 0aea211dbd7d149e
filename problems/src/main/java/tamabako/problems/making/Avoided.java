package tamabako.problems.making;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;

/// Sums that are not to be made, because pupils have had them. A sum is the same whatever it is
/// named, told or answered under.
public final class Avoided {

    /// Nothing to avoid.
    public static final Avoided NONE = new Avoided(List.of());

    private final Map<Sum, Problem> sums = new HashMap<>();

    private Avoided(Collection<? extends Problem> problems) {
        problems.forEach(problem -> sums.put(Sum.of(problem), problem));
    }

    public static Avoided of(Collection<? extends Problem> problems) {
        return problems.isEmpty() ? NONE : new Avoided(problems);
    }

    /// Whether the sum of `problem` is among them.
    public boolean contains(Problem problem) {
        return !sums.isEmpty() && sums.containsKey(Sum.of(problem));
    }

    /// How many different sums are such that `which` holds.
    public long count(Predicate<Problem> which) {
        return sums.values().stream().filter(which).count();
    }

    /// What is asked, without the zeros that may stand at the end of a decimal.
    private record Sum(String kind, List<BigDecimal> numbers) {

        static Sum of(Problem problem) {
            List<BigDecimal> numbers =
                    switch (problem) {
                        case Column column -> column.rows();
                        case Product product ->
                                List.of(product.multiplicand(), product.multiplier());
                        case Quotient quotient -> List.of(quotient.dividend(), quotient.divisor());
                        case Root root -> List.of(BigDecimal.valueOf(root.degree()), root.of());
                    };
            return new Sum(
                    problem.kind(), numbers.stream().map(BigDecimal::stripTrailingZeros).toList());
        }
    }
}
