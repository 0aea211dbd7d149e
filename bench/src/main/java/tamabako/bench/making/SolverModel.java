package tamabako.bench.making;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.search.limits.FailCounter;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.search.strategy.selectors.values.IntDomainRandom;
import org.chocosolver.solver.search.strategy.selectors.variables.DomOverWDeg;
import org.chocosolver.solver.search.strategy.selectors.variables.FirstFail;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/// A task modelled for choco-solver, to be solved with random values and restarts.
final class SolverModel {

    private static final int RESTARTS = 100_000;

    /// For longer rows it is quicker to weigh variables by the failures that they led to; for
    /// shorter ones to take those with the fewest values left. Both were tried on all tasks, with
    /// random variables besides and with several scales of restarts.
    private static final int WEIGHED_FROM = 6;

    private final SolverTask task;
    private final Model model = new Model();
    private final BoolVar[] minus;

    /// By row and rod, the lowest rod first.
    private final IntVar[][] digits;

    private final IntVar[][] totals;
    private final List<IntVar> techniques = new ArrayList<>();

    SolverModel(SolverTask task) {
        this.task = task;
        this.minus = model.boolVarArray(task.rows());
        this.digits = new IntVar[task.rows()][task.most()];
        this.totals = model.intVarMatrix(task.rows(), task.rods(), 0, 9);
        shape();
        work();
        count();
    }

    private void shape() {
        minus[0].eq(0).post();
        model.sum(minus, ">=", task.leastMinus()).post();
        model.sum(minus, "<=", task.mostMinus()).post();
        IntVar[] leads = model.intVarArray(task.rows(), 1, 9);
        for (int row = 0; row < task.rows(); row++) {
            for (int rod = 0; rod < task.most(); rod++) {
                int least = rod == task.most() - 1 && task.least() == task.most() ? 1 : 0;
                int most = rod < task.least() ? 9 : Steps.BLANK;
                digits[row][rod] = model.intVar(least, most);
            }
            lead(row, leads[row]);
        }
        for (int row = 1; task.leadsDiffer() && row < task.rows(); row++) {
            model.arithm(leads[row - 1], "!=", leads[row]).post();
        }
    }

    /// Ties the first digit of a row to the digits on its highest rods.
    private void lead(int row, IntVar lead) {
        int from = task.least() - 1;
        IntVar[] vars = new IntVar[task.most() - from + 1];
        for (int rod = from; rod < task.most(); rod++) {
            vars[rod - from] = digits[row][rod];
        }
        vars[vars.length - 1] = lead;
        Tuples tuples = new Tuples(true);
        for (int length = task.least(); length <= task.most(); length++) {
            leads(new int[vars.length], length - 1 - from, vars.length - 2, tuples);
        }
        model.table(vars, tuples).post();
    }

    private static void leads(int[] tuple, int highest, int rod, Tuples tuples) {
        if (rod < 0) {
            tuple[tuple.length - 1] = tuple[highest];
            tuples.add(tuple.clone());
        } else if (rod > highest) {
            tuple[rod] = Steps.BLANK;
            leads(tuple, highest, rod - 1, tuples);
        } else {
            for (int digit = rod == highest ? 1 : 0; digit <= 9; digit++) {
                tuple[rod] = digit;
                leads(tuple, highest, rod - 1, tuples);
            }
        }
    }

    private void work() {
        for (int rod = 0; rod < task.rods(); rod++) {
            set(rod);
        }
        Tuples steps = Steps.of(task);
        for (int row = 1; row < task.rows(); row++) {
            IntVar carry = model.intVar(0);
            for (int rod = 0; rod < task.rods(); rod++) {
                IntVar entered =
                        rod < task.most() ? digits[row][rod] : model.intVar(Steps.BLANK);
                IntVar held = totals[row - 1][rod];
                IntVar then = totals[row][rod];
                boolean isLast = rod == task.rods() - 1;
                IntVar out = isLast ? model.intVar(0) : model.boolVar();
                IntVar[] vars;
                if (!task.passesTen()) {
                    vars = new IntVar[] {minus[row], held, entered, then};
                } else if (task.asksForTechniques()) {
                    IntVar first = model.intVar(0, 4);
                    IntVar second = model.intVar(0, 4);
                    techniques.add(first);
                    techniques.add(second);
                    vars = new IntVar[] {minus[row], held, entered, carry, then, out, first, second};
                } else {
                    vars = new IntVar[] {minus[row], held, entered, carry, then, out};
                }
                model.table(vars, steps).post();
                carry = out;
            }
        }
        if (task.answerDigits() > 0) {
            for (int rod = task.answerDigits(); rod < task.rods(); rod++) {
                totals[task.rows() - 1][rod].eq(0).post();
            }
            totals[task.rows() - 1][task.answerDigits() - 1].ne(0).post();
        }
    }

    private void set(int rod) {
        if (rod >= task.most()) {
            totals[0][rod].eq(0).post();
            return;
        }
        Tuples tuples = new Tuples(true);
        for (int digit = 0; digit <= Steps.BLANK; digit++) {
            tuples.add(digit, digit % Steps.BLANK);
        }
        model.table(new IntVar[] {digits[0][rod], totals[0][rod]}, tuples).post();
    }

    private void count() {
        if (task.mostDigits() > 0) {
            model.globalCardinality(
                            flat(digits),
                            IntStream.rangeClosed(0, 9).toArray(),
                            model.intVarArray(10, task.leastDigits(), task.mostDigits()),
                            false)
                    .post();
        }
        if (task.eachTechnique() > 0) {
            model.globalCardinality(
                            techniques.toArray(IntVar[]::new),
                            IntStream.rangeClosed(1, 4).toArray(),
                            model.intVarArray(4, task.eachTechnique(), techniques.size()),
                            false)
                    .post();
        }
    }

    private static IntVar[] flat(IntVar[][] rows) {
        return Arrays.stream(rows)
                .flatMap(Arrays::stream)
                .toArray(IntVar[]::new);
    }

    /// A column found with values drawn from `seed`, whatever was found before.
    long[] solve(long seed) {
        Solver solver = model.getSolver();
        solver.reset();
        IntVar[] open = Stream.concat(Stream.of(minus), Stream.of(flat(digits))).toArray(IntVar[]::new);
        IntDomainRandom values = new IntDomainRandom(seed);
        solver.setSearch(
                task.most() > WEIGHED_FROM
                        ? Search.intVarSearch(new DomOverWDeg<>(open, seed), values, open)
                        : Search.intVarSearch(new FirstFail(model), values, open));
        solver.clearRestarter();
        solver.setLubyRestart(
                task.most() > WEIGHED_FROM ? 20 : 10, new FailCounter(model, 0), RESTARTS);
        if (!solver.solve()) {
            throw new IllegalStateException("The solver found nothing for " + task + ".");
        }
        long[] rows = new long[task.rows()];
        for (int row = 0; row < rows.length; row++) {
            long number = 0;
            for (int rod = task.most() - 1; rod >= 0; rod--) {
                number = 10 * number + digits[row][rod].getValue() % Steps.BLANK;
            }
            rows[row] = minus[row].getValue() == 1 ? -number : number;
        }
        return rows;
    }
}
