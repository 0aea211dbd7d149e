package tamabako.bench.making;

import org.chocosolver.solver.constraints.extension.Tuples;
import tamabako.frame.Technique;

/// Everything that can happen on one rod in one row, as a table for a solver: sign, digit held,
/// digit entered, carry from the right, digit held then, carry to the left, and where techniques
/// are asked about, those of the digit and of the carry.
///
/// Working from the left, a rod still holds the digit of the total before when its own digit comes,
/// and the carry from the right comes after that: so one table does for every rod and row.
final class Steps {

    /// Stands for no digit, left of a short row.
    static final int BLANK = 10;

    /// Stands for no step; the techniques come after it in their order.
    static final int NONE = 0;

    private Steps() {}

    static Tuples of(SolverTask task) {
        Tuples tuples = new Tuples(true);
        for (int sign = 0; sign <= 1; sign++) {
            for (int held = 0; held <= 9; held++) {
                for (int entered = 0; entered <= BLANK; entered++) {
                    for (int carry = 0; carry <= 1; carry++) {
                        add(task, sign, held, entered, carry, tuples);
                    }
                }
            }
        }
        return tuples;
    }

    private static void add(
            SolverTask task, int sign, int held, int entered, int carry, Tuples tuples) {
        int digit = entered % BLANK;
        int way = sign == 0 ? 1 : -1;
        int first = technique(sign, held, digit);
        int between = Math.floorMod(held + way * digit, 10);
        int second = technique(sign, between, carry);
        int end = held + way * (digit + carry);
        if (!isAllowed(task, first) || !isAllowed(task, second)) {
            return;
        }
        int then = Math.floorMod(end, 10);
        int out = then == end ? 0 : 1;
        if (!task.passesTen()) {
            if (carry == 0) {
                tuples.add(sign, held, entered, then);
            }
        } else if (task.asksForTechniques()) {
            tuples.add(sign, held, entered, carry, then, out, first, second);
        } else {
            tuples.add(sign, held, entered, carry, then, out);
        }
    }

    private static int technique(int sign, int held, int digit) {
        if (digit == 0) {
            return NONE;
        }
        Technique technique =
                sign == 0 ? Technique.ofAdding(held, digit) : Technique.ofTaking(held, digit);
        return technique.ordinal() + 1;
    }

    private static boolean isAllowed(SolverTask task, int technique) {
        return technique == NONE || task.allowed().contains(Technique.values()[technique - 1]);
    }
}
