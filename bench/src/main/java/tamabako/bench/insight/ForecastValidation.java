package tamabako.bench.insight;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import tamabako.insight.readiness.Forecast;
import tamabako.insight.readiness.Outline;
import tamabako.insight.readiness.Standing;
import tamabako.insight.readiness.Variety;
import tamabako.insight.readiness.Worked;

/// Writes the table of docs/validation.md on forecasts: simulated pupils practise, are judged, and
/// sit the exam.
public final class ForecastValidation {

    private static final long SEED = 20_261_130;
    private static final int[] PRACTISED = {10, 30, 100, 300};

    private enum Judge {
        BASE_RATE("base rate"),
        FRACTION("fraction right, normal, no clock"),
        PLUG_IN("likeliest ability, no clock"),
        PLUG_IN_CLOCK("likeliest ability and clock"),
        NO_DAY("ours without the day"),
        APART("ours with sections apart"),
        OURS("**ours**"),
        ORACLE("true ability and pace");

        private final String words;

        Judge(String words) {
            this.words = words;
        }
    }

    /// What the judges know of pupils in general: the spreads that were simulated, by the slope of
    /// the logarithm of slips on ability for a pupil of mean ability.
    private static final Variety KNOWN =
            new Variety(
                    new Variety.Trait(0, 0.77, 0.45, 0.315),
                    new Variety.Trait(0, 0.25, 0.1, 0.07),
                    ExamPupil.SPREAD);

    private static final Variety NO_DAY =
            new Variety(
                    new Variety.Trait(0, 0.77, 0.45, 0.05),
                    new Variety.Trait(0, 0.25, 0.1, 0.005),
                    ExamPupil.SPREAD);

    private static final Variety APART =
            new Variety(
                    new Variety.Trait(0, 0.05, 0.89, 0.315),
                    new Variety.Trait(0, 0.01, 0.27, 0.07),
                    ExamPupil.SPREAD);

    private ForecastValidation() {}

    private record Told(Map<Judge, Double> chances, boolean passed) {}

    /// Runs it with so many pupils (20,000 if not given), after each number of problems.
    public static void main(String[] arguments) {
        int pupils = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 20_000;
        Outline outline = ExamPaper.outline();
        System.out.println("| judge | problems of each section | AUC | Brier | ECE | slope |");
        for (int count : PRACTISED) {
            List<Told> told =
                    IntStream.range(0, pupils)
                            .parallel()
                            .mapToObj(i -> pupil(SEED + i, count, outline))
                            .toList();
            double rate = told.stream().filter(Told::passed).count() / (double) pupils;
            for (Judge judge : Judge.values()) {
                ForecastScore score = new ForecastScore();
                told.forEach(one ->
                        score.note(
                                judge == Judge.BASE_RATE
                                        ? rate
                                        : one.chances().getOrDefault(judge, 0.0),
                                one.passed()));
                System.out.printf(
                        Locale.ROOT,
                        "| %s | %d | %.3f | %.4f | %.4f | %.2f |%n",
                        judge.words,
                        count,
                        score.area(),
                        score.brier(),
                        score.calibrationError(),
                        score.slope());
            }
            System.out.printf(Locale.ROOT, "passed: %.3f%n", rate);
        }
    }

    private static Told pupil(long seed, int count, Outline outline) {
        SplittableRandom random = new SplittableRandom(seed);
        ExamPupil pupil = new ExamPupil(random);
        List<Worked> practice = pupil.practise(count, outline, random);
        boolean passed = ExamPupil.passed(pupil.sit(random));
        Map<Judge, Double> chances = new EnumMap<>(Judge.class);
        chances.put(Judge.FRACTION, byFraction(practice, outline));
        chances.put(Judge.PLUG_IN, byLikeliest(practice, outline, false));
        chances.put(Judge.PLUG_IN_CLOCK, byLikeliest(practice, outline, true));
        chances.put(Judge.OURS, ours(practice, outline, KNOWN));
        chances.put(Judge.NO_DAY, ours(practice, outline, NO_DAY));
        chances.put(Judge.APART, ours(practice, outline, APART));
        chances.put(Judge.ORACLE, pupil.oracle());
        return new Told(chances, passed);
    }

    private static double ours(List<Worked> practice, Outline outline, Variety variety) {
        return Forecast.PLAIN.chance(Standing.of(practice, variety), outline);
    }

    private static List<Worked> of(List<Worked> practice, Outline outline, int section) {
        return practice.stream()
                .filter(one -> one.field().equals(outline.parts().get(section).field()))
                .toList();
    }

    /// The share of right answers gives mean and spread of a normal score.
    private static double byFraction(List<Worked> practice, Outline outline) {
        double chance = 1;
        for (int s = 0; s < ExamPaper.SECTIONS; s++) {
            List<Worked> here = of(practice, outline, s);
            double right = here.stream().filter(Worked::right).count() / (double) here.size();
            int count = ExamPaper.COUNT[s];
            double spread = Math.sqrt(Math.max(1e-9, right * (1 - right) / count));
            double least = (0.7 * count - 0.5) / count;
            chance *= 0.5 * erfc((least - right) / spread / Math.sqrt(2));
        }
        return chance;
    }

    /// The complementary error function (Numerical Recipes' rational form, 1.2e-7).
    static double erfc(double x) {
        double z = Math.abs(x);
        double t = 1 / (1 + 0.5 * z);
        double[] c = {
            0.17087277,
            -0.82215223,
            1.48851587,
            -1.13520398,
            0.27886807,
            -0.18628806,
            0.09678418,
            0.37409196,
            1.00002368,
            -1.26551223
        };
        double sum = 0;
        for (double one : c) {
            sum = sum * t + one;
        }
        double value = t * Math.exp(-z * z + sum);
        return x >= 0 ? value : 2 - value;
    }

    /// The likeliest ability and mean pace of each section, taken for the true ones.
    private static double byLikeliest(List<Worked> practice, Outline outline, boolean clocked) {
        double chance = 1;
        for (int s = 0; s < ExamPaper.SECTIONS; s++) {
            List<Worked> here = of(practice, outline, s);
            double ability = likeliest(here);
            double pace =
                    here.stream().mapToDouble(one -> one.pace().orElse(0)).average().orElse(0);
            chance *=
                    clocked
                            ? ExamPupil.pass(s, ability, pace)
                            : ExamPupil.passUnclocked(s, ability);
        }
        return chance;
    }

    /// By halving; all right or all wrong counts as half a problem less.
    private static double likeliest(List<Worked> worked) {
        List<Double> difficulties = new ArrayList<>();
        for (Worked one : worked) {
            difficulties.add(ExamPaper.ABILITY[0] + Math.log(Math.expm1(one.slips())));
        }
        double right = worked.stream().filter(Worked::right).count();
        double wanted = Math.clamp(right, 0.5, worked.size() - 0.5);
        double low = -6;
        double high = 10;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            double expected =
                    difficulties.stream()
                            .mapToDouble(difficulty -> ExamPupil.right(middle, difficulty))
                            .sum();
            if (expected < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
