package tamabako.records.demo;

import java.math.BigDecimal;
import java.util.List;
import java.util.SplittableRandom;
import tamabako.frame.Cause;
import tamabako.frame.Setup;
import tamabako.frame.Step;
import tamabako.problems.Column;
import tamabako.problems.Problem;

/// A slip that a simulated pupil makes.
enum DemoSlip {
    CARRY_LEFT_OUT {
        @Override
        BigDecimal answer(Problem problem, SplittableRandom chance) {
            List<Step> carries =
                    problem.work(Setup.COMMON).trace().steps().stream()
                            .filter(step -> step.cause() instanceof Cause.Carry)
                            .toList();
            if (carries.isEmpty()) {
                return WRITTEN_SWAPPED.answer(problem, chance);
            }
            Step left = carries.get(chance.nextInt(carries.size()));
            return right(problem).subtract(BigDecimal.ONE.scaleByPowerOfTen(left.rod()));
        }
    },
    ROW_SKIPPED {
        @Override
        BigDecimal answer(Problem problem, SplittableRandom chance) {
            if (!(problem instanceof Column column)) {
                return CARRY_LEFT_OUT.answer(problem, chance);
            }
            return right(problem).subtract(anyLaterRow(column, chance));
        }
    },
    SIGN_MISSED {
        @Override
        BigDecimal answer(Problem problem, SplittableRandom chance) {
            if (!(problem instanceof Column(_, List<BigDecimal> rows, _))) {
                return CARRY_LEFT_OUT.answer(problem, chance);
            }
            List<BigDecimal> minus = rows.stream().filter(row -> row.signum() < 0).toList();
            if (minus.isEmpty()) {
                return CARRY_LEFT_OUT.answer(problem, chance);
            }
            BigDecimal missed = minus.get(chance.nextInt(minus.size()));
            return right(problem).subtract(missed).subtract(missed);
        }
    },
    FIVE_BEAD {
        @Override
        BigDecimal answer(Problem problem, SplittableRandom chance) {
            int rod = chance.nextInt(Math.max(1, right(problem).precision()));
            BigDecimal five = BigDecimal.valueOf(5).scaleByPowerOfTen(rod);
            BigDecimal less = right(problem).subtract(five);
            return less.signum() >= 0 ? less : right(problem).add(five);
        }
    },
    WRITTEN_SWAPPED {
        @Override
        BigDecimal answer(Problem problem, SplittableRandom chance) {
            StringBuilder figures = new StringBuilder(right(problem).toPlainString());
            for (int i = figures.length() - 1; i > 0; i--) {
                char last = figures.charAt(i);
                char before = figures.charAt(i - 1);
                if (last != before && Character.isDigit(before) && before != '0') {
                    figures.setCharAt(i, before);
                    figures.setCharAt(i - 1, last);
                    return new BigDecimal(figures.toString());
                }
            }
            return right(problem).add(BigDecimal.ONE);
        }
    };

    /// The answer that a pupil writes who makes this slip once.
    abstract BigDecimal answer(Problem problem, SplittableRandom chance);

    private static BigDecimal right(Problem problem) {
        return problem.answer().value();
    }

    private static BigDecimal anyLaterRow(Column column, SplittableRandom chance) {
        int rows = column.rows().size();
        return column.rows().get(rows == 1 ? 0 : 1 + chance.nextInt(rows - 1));
    }
}
