package tamabako.desk.demo;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tamabako.desk.sheet.Shown;
import tamabako.frame.Cause;
import tamabako.frame.Setup;
import tamabako.frame.Step;
import tamabako.problems.Column;
import tamabako.problems.Problem;

/// A pupil who works every problem rightly but for a slip now and then.
///
/// @param name the given name
/// @param language the language the pupil reads, such as `ja`
/// @param slipsOf100 of a hundred problems, in how many this pupil makes a slip
/// @param leftOutOf100 of a hundred problems, how many this pupil leaves out
record DemoPupil(String name, String language, int slipsOf100, int leftOutOf100) {

    /// What the pupil writes for `problem`, drawn from `chance`.
    String answer(Problem problem, Random chance) {
        int drawn = chance.nextInt(100);
        if (drawn < leftOutOf100) {
            return "";
        }
        BigDecimal right = problem.answer().value();
        if (drawn >= leftOutOf100 + slipsOf100) {
            return Shown.number(right);
        }
        List<BigDecimal> slips = slips(problem);
        return Shown.number(right.add(slips.get(chance.nextInt(slips.size()))));
    }

    /// By how much each single slip that can be made here changes the answer: a carry or a borrow
    /// left out, a bead too many, a row left out, taken twice or with the wrong sign.
    private static List<BigDecimal> slips(Problem problem) {
        List<BigDecimal> slips = new ArrayList<>();
        for (Step step : problem.work(Setup.COMMON).trace().steps()) {
            boolean passed =
                    step.cause() instanceof Cause.Carry || step.cause() instanceof Cause.Borrow;
            BigDecimal bead = BigDecimal.ONE.scaleByPowerOfTen(step.rod());
            slips.add(passed ? bead.multiply(BigDecimal.valueOf(-step.digit())) : bead);
        }
        if (problem instanceof Column column) {
            for (BigDecimal row : column.rows().subList(1, column.rows().size())) {
                slips.add(row.negate());
                slips.add(row);
                if (row.signum() < 0) {
                    slips.add(row.multiply(BigDecimal.valueOf(-2)));
                }
            }
        }
        return slips;
    }
}
