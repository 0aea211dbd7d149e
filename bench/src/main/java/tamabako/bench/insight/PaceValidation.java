package tamabako.bench.insight;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;

/// Writes the tables of docs/validation.md on pace.
public final class PaceValidation {

    private static final long SEED = 20_261_130;
    private static final int PUPILS = 200;

    private PaceValidation() {}

    /// Runs the trials.
    public static void main(String[] arguments) {
        PrintStream out = System.out;
        List<ColumnPlan> alike = List.of(new ColumnPlan(10, 5));
        List<ColumnPlan> varied = new ArrayList<>();
        for (int digits = 2; digits <= 7; digits++) {
            varied.add(new ColumnPlan(17 - 2 * digits, digits));
        }
        out.println(PaceTrial.head());
        for (int problems : new int[] {30, 100, 300}) {
            out.println(
                    new PaceTrial(alike, PUPILS, problems, 0.15, SEED)
                            .line("10 × 5", problems, 0.15));
            out.println(
                    new PaceTrial(varied, PUPILS, problems, 0.15, SEED)
                            .line("varied", problems, 0.15));
        }
        out.println(new PaceTrial(alike, PUPILS, 100, 0.1, SEED).line("10 × 5", 100, 0.1));
    }
}
