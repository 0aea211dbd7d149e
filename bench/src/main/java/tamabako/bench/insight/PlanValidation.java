package tamabako.bench.insight;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import tamabako.insight.plan.Learning;

/// Writes the table of docs/validation.md on plans.
public final class PlanValidation {

    private static final long DOCUMENTED = 20_261_130;
    private static final int TENTHS = 10;

    private PlanValidation() {}

    /// One pupil, with the gain of one way and that of work as in the exam only.
    private record Pair(double before, double gain, double asInExam) {}

    /// Runs it with so many pupils (1,000 if not given), practice that tells so much (the share of
    /// slips gone each time a move is met), what the planner takes that for, so many answers known
    /// before, and the seed; a last argument names the ways.
    public static void main(String[] arguments) {
        int pupils = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1_000;
        double rate = arguments.length > 1 ? Double.parseDouble(arguments[1]) : 0.0017;
        double believed = arguments.length > 2 ? Double.parseDouble(arguments[2]) : rate;
        int known = arguments.length > 3 ? Integer.parseInt(arguments[3]) : 100;
        long seed = arguments.length > 4 ? Long.parseLong(arguments[4]) : DOCUMENTED;
        PlanTrial trial = new PlanTrial(rate, new Learning(believed));
        List<PlanTrial.Pupil> drawn =
                IntStream.range(0, pupils)
                        .parallel()
                        .mapToObj(i -> trial.pupil(seed + i, known))
                        .toList();
        List<PlanTrial.Gain> asInExam = gains(trial, PlanTrial.Way.EXAM_ONLY, drawn, seed);
        System.out.println(
                "| way | gain in points | standard error of the difference | least gain over the exam's in a tenth |");
        for (PlanTrial.Way way : PlanTrial.Way.values()) {
            if (arguments.length > 5 && !arguments[5].contains(way.name())) {
                continue;
            }
            List<PlanTrial.Gain> gains =
                    way == PlanTrial.Way.EXAM_ONLY ? asInExam : gains(trial, way, drawn, seed);
            List<Pair> pairs =
                    IntStream.range(0, pupils)
                            .mapToObj(i ->
                                    new Pair(
                                            gains.get(i).before(),
                                            gains.get(i).points(),
                                            asInExam.get(i).points()))
                            .sorted(Comparator.comparingDouble(Pair::before))
                            .toList();
            double mean = pairs.stream().mapToDouble(Pair::gain).average().orElse(0);
            double over = over(pairs);
            double variance =
                    pairs.stream()
                            .mapToDouble(one -> Math.pow(one.gain() - one.asInExam() - over, 2))
                            .average()
                            .orElse(0);
            double least =
                    IntStream.range(0, TENTHS)
                            .mapToDouble(tenth ->
                                    over(
                                            pairs.subList(
                                                    tenth * pupils / TENTHS,
                                                    (tenth + 1) * pupils / TENTHS)))
                            .min()
                            .orElse(0);
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %.2f | %.2f | %.2f |%n",
                    way.words(),
                    mean,
                    Math.sqrt(variance / pupils),
                    least);
        }
    }

    private static double over(List<Pair> pairs) {
        return pairs.stream().mapToDouble(one -> one.gain() - one.asInExam()).average().orElse(0);
    }

    private static List<PlanTrial.Gain> gains(
            PlanTrial trial, PlanTrial.Way way, List<PlanTrial.Pupil> pupils, long seed) {
        return IntStream.range(0, pupils.size())
                .parallel()
                .mapToObj(i -> trial.work(way, pupils.get(i), seed + i))
                .toList();
    }
}
