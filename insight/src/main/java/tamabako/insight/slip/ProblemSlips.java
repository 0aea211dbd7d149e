package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import tamabako.frame.Cause;
import tamabako.frame.Rounding;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;

/// All single slips that can be made in a problem, from first reading to last writing.
final class ProblemSlips {

    private static final int USUAL_ROOM = 512;
    private static final int SLIPS_OF_A_DIGIT = 20;

    private final Problem problem;
    private final int places;
    private final Events events;

    private ProblemSlips(Problem problem, Set<Omission> omitted) {
        this.events = new Events(room(problem), omitted);
        this.problem = problem;
        this.places = places(problem);
    }

    /// The slips of `problem`. There are none but those of writing if a number in it, or its rows
    /// together, are longer than the finder works with.
    static Events of(Problem problem, Set<Omission> omitted) {
        ProblemSlips slips = new ProblemSlips(problem, omitted);
        Optional<Scaled> answer = Scaled.of(problem.answer().value(), slips.places);
        answer.ifPresent(value -> slips.add(value.units()));
        return slips.events;
    }

    /// The slips of `problem` that leave its answer off by `tenths`, which is not 0; empty where
    /// they are not to be found without the others.
    static Optional<Events> toward(Problem problem, Set<Omission> omitted, long tenths) {
        return problem instanceof Column column
                        && column.terms().mode() == Mode.FRAME
                        && omitted.isEmpty()
                ? UnitRows.of(column).map(units -> toward(units, tenths))
                : Optional.empty();
    }

    private static Events toward(UnitRows units, long tenths) {
        Events events = Events.toward(tenths);
        FastColumn worked = new FastColumn(units.rows(), units.places());
        new ColumnSlips(worked, -units.places(), events).add(Sought.of(tenths));
        events.workIsDone();
        new WrittenSlips(10 * units.total(), units.places() + 1, events).add(tenths);
        return events;
    }

    /// About how many slips there will be: room for them is made once.
    private static int room(Problem problem) {
        return switch (problem) {
            case Column column ->
                    column.rows().stream().mapToInt(BigDecimal::precision).sum() * SLIPS_OF_A_DIGIT
                            + USUAL_ROOM;
            case Product _, Quotient _, Root _ -> 2 * USUAL_ROOM;
        };
    }

    /// How many decimal places the answer may have.
    static int places(Problem problem) {
        return switch (problem) {
            case Column column -> UnitRows.places(column);
            case Product product ->
                    isRounded(product)
                            ? product.terms().places().orElse(0)
                            : places(product.multiplicand()) + places(product.multiplier());
            case Quotient _, Root _ -> problem.terms().places().orElse(0);
        };
    }

    private static int places(BigDecimal number) {
        return Math.max(0, number.scale());
    }

    private static boolean isRounded(Product product) {
        return product.terms().places().isPresent() || product.terms().unit().isPresent();
    }

    private void add(long answer) {
        switch (problem) {
            case Column column -> add(column);
            case Product product -> add(product);
            case Quotient quotient -> add(quotient);
            case Root root -> new RootSlips(root, answer, places, events).add();
        }
        events.workIsDone();
        if (!events.omit(Omission.PENCIL)) {
            new WrittenSlips(10 * answer, places + 1, events).add();
        }
    }

    private void add(Column column) {
        UnitRows.of(column).ifPresent(this::add);
    }

    private void add(UnitRows units) {
        FastColumn worked = new FastColumn(units.rows(), places);
        if (mode() == Mode.FRAME) {
            new ColumnSlips(worked, -places, events).add();
        } else {
            new MindSlips(worked, -places, mode() == Mode.CALLED, events).add();
        }
    }

    private Mode mode() {
        return problem.terms().mode();
    }

    private void add(Product product) {
        int first = places(product.multiplicand());
        int second = places(product.multiplier());
        Optional<Scaled> exact =
                Scaled.of(product.multiplicand().multiply(product.multiplier()), first + second);
        if (exact.isEmpty()
                || product.multiplicand().signum() <= 0
                || product.multiplier().signum() <= 0) {
            return;
        }
        Reader reader = new Reader(first + second - places, product.rounding());
        ProductSlips slips =
                new ProductSlips(
                        units(product.multiplicand()),
                        units(product.multiplier()),
                        -first - second,
                        mode(),
                        reader.effectOn(exact.get().units()),
                        events);
        slips.addOperands(first);
        slips.addWork();
    }

    private static long units(BigDecimal number) {
        return units(number, places(number));
    }

    private static long units(BigDecimal number, int places) {
        return Scaled.of(number, places).orElseThrow().units();
    }

    private void add(Quotient quotient) {
        int more = quotient.rounding() == Rounding.HALF_UP ? 1 : 0;
        int shift = places + more + places(quotient.divisor()) - places(quotient.dividend());
        BigDecimal dividend =
                quotient.dividend()
                        .scaleByPowerOfTen(places(quotient.dividend()) + Math.max(0, shift));
        BigDecimal divisor =
                quotient.divisor()
                        .scaleByPowerOfTen(places(quotient.divisor()) + Math.max(0, -shift));
        Optional<Scaled> first = Scaled.of(dividend, 0);
        Optional<Scaled> second = Scaled.of(divisor, 0);
        if (first.isEmpty()
                || second.isEmpty()
                || dividend.signum() <= 0
                || divisor.signum() <= 0) {
            return;
        }
        add(quotient, first.get().units(), second.get().units(), more);
    }

    private void add(Quotient quotient, long dividend, long divisor, int more) {
        long worked = dividend / divisor;
        Effect effect = new Reader(more, quotient.rounding()).effectOn(worked);
        QuotientSlips slips = new QuotientSlips(dividend, divisor, -places - more, effect, events);
        slips.add(mode());
        OperandSlips operands = new OperandSlips(mode(), events);
        int first = places(quotient.dividend());
        int second = places(quotient.divisor());
        long ofDividend = dividend / units(quotient.dividend());
        long ofDivisor = divisor / units(quotient.divisor());
        operands.add(
                Cause.Operand.DIVIDEND,
                units(quotient.dividend()),
                -first,
                change -> slips.tenthsOfDividend(change * ofDividend));
        operands.add(
                Cause.Operand.DIVISOR,
                units(quotient.divisor()),
                -second,
                change -> {
                    long changed = divisor + change * ofDivisor;
                    return changed <= 0 ? 0 : effect.tenths(dividend / changed - worked);
                });
    }
}
