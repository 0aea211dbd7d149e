package tamabako.frame.walk;

import java.math.BigInteger;
import java.util.List;
import java.util.stream.Stream;
import tamabako.frame.Cause;
import tamabako.frame.Step;
import tamabako.frame.Technique;
import tamabako.frame.Working;

/// All that a walk tells of a column, for comparing.
record Counts(
        BigInteger total,
        List<Integer> techniques,
        int carries,
        int borrows,
        int strokes,
        int settingSteps,
        int settingStrokes,
        boolean belowZero) {

    static Counts of(ColumnWalk walk) {
        return new Counts(
                BigInteger.valueOf(walk.total()),
                Stream.of(Technique.values()).map(walk.tally()::count).toList(),
                walk.tally().carries(),
                walk.tally().borrows(),
                walk.tally().strokes(),
                walk.settingSteps(),
                walk.settingStrokes(),
                walk.wentBelowZero());
    }

    /// What the traces of `working` hold, in units of the decimal place `places`.
    static Counts of(Working working, int places) {
        List<Step> setting = working.setting().steps();
        List<Step> worked = working.trace().steps();
        List<Step> all = Stream.concat(setting.stream(), worked.stream()).toList();
        return new Counts(
                working.outcome().answer().scaleByPowerOfTen(places).toBigIntegerExact(),
                Stream.of(Technique.values()).map(technique -> having(all, technique)).toList(),
                causedBy(all, Cause.Carry.class),
                causedBy(all, Cause.Borrow.class),
                strokes(all),
                setting.size(),
                strokes(setting),
                causedBy(all, Cause.Loan.class) != 0);
    }

    private static int having(List<Step> steps, Technique technique) {
        return (int) steps.stream().filter(step -> step.technique() == technique).count();
    }

    private static int causedBy(List<Step> steps, Class<? extends Cause> cause) {
        return (int) steps.stream().filter(step -> cause.isInstance(step.cause())).count();
    }

    private static int strokes(List<Step> steps) {
        return steps.stream().mapToInt(step -> step.strokes().size()).sum();
    }
}
