package tamabako.bench.insight;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import tamabako.insight.readiness.Outline;
import tamabako.insight.readiness.ScoreChances;
import tamabako.insight.readiness.Worked;

/// A simulated pupil before an exam of three sections, each 420 s and to be passed by itself.
///
/// How often problems go right is logistic in ability less difficulty, which is not what the
/// forecast reckons with; times are lognormal. On every day the pupil is better or worse, and
/// faster or slower, in all sections alike.
final class ExamPupil {

    static final int PASS = 70;
    static final double LIMIT = 420;
    static final double SPREAD = 0.25;

    private static final double SHARED = 0.85;
    private static final double OWN = 0.5;
    private static final double SHARED_PACE = 0.25;
    private static final double OWN_PACE = 0.1;
    private static final double DAY = 0.35;
    private static final double DAY_PACE = 0.07;
    private static final double HARDEST = 0.8;

    private final double[] ability = new double[ExamPaper.SECTIONS];
    private final double[] pace = new double[ExamPaper.SECTIONS];

    ExamPupil(RandomGenerator random) {
        double shared = SHARED * random.nextGaussian();
        double sharedPace = SHARED_PACE * random.nextGaussian();
        for (int s = 0; s < ability.length; s++) {
            ability[s] = ExamPaper.ABILITY[s] + shared + OWN * random.nextGaussian();
            pace[s] = sharedPace + OWN_PACE * random.nextGaussian();
        }
    }

    static double right(double ability, double difficulty) {
        return 1 / (1 + Math.exp(difficulty - ability));
    }

    /// So many problems of each section, as they are practised.
    List<Worked> practise(int count, Outline outline, RandomGenerator random) {
        List<Worked> worked = new ArrayList<>();
        for (int s = 0; s < ability.length; s++) {
            for (int i = 0; i < count; i++) {
                double difficulty = HARDEST * (2 * random.nextDouble() - 1);
                worked.add(
                        new Worked(
                                outline.parts().get(s).field(),
                                ExamPaper.slips(s, difficulty),
                                random.nextDouble() < right(ability[s], difficulty),
                                OptionalDouble.of(pace[s] + SPREAD * random.nextGaussian()),
                                OptionalLong.empty()));
            }
        }
        return worked;
    }

    /// The points of each section in one sitting.
    int[] sit(RandomGenerator random) {
        double day = DAY * random.nextGaussian();
        double dayPace = DAY_PACE * random.nextGaussian();
        int[] points = new int[ability.length];
        for (int s = 0; s < points.length; s++) {
            double seconds = 0;
            for (int i = 0; i < ExamPaper.COUNT[s]; i++) {
                double difficulty = ExamPaper.difficulty(s, i);
                double log = pace[s] + dayPace + SPREAD * random.nextGaussian();
                seconds += ExamPaper.seconds(s, difficulty) * Math.exp(log);
                if (seconds > LIMIT) {
                    break;
                }
                boolean right = random.nextDouble() < right(ability[s] + day, difficulty);
                points[s] += right ? ExamPaper.POINTS[s] : 0;
            }
        }
        return points;
    }

    static boolean passed(int[] points) {
        return IntStream.of(points).allMatch(one -> one >= PASS);
    }

    /// The chance to pass of a judge who knows the pupil, but not the day.
    double oracle() {
        double sum = 0;
        double weights = 0;
        for (int d = -6; d <= 6; d++) {
            for (int t = -2; t <= 2; t++) {
                double weight = Math.exp(-(d * d / 4.0 + t * t) / 2);
                double chance = 1;
                for (int s = 0; s < ability.length; s++) {
                    chance *= pass(s, ability[s] + DAY * d / 2, pace[s] + DAY_PACE * t);
                }
                sum += weight * chance;
                weights += weight;
            }
        }
        return sum / weights;
    }

    /// The chance to pass a section with this ability and pace.
    static double pass(int section, double ability, double pace) {
        return ExamPaper.chances(section, ability, pace, LIMIT).atLeast(PASS);
    }

    /// The same without a clock.
    static double passUnclocked(int section, double ability) {
        ScoreChances chances = ExamPaper.chances(section, ability, 0, Double.POSITIVE_INFINITY);
        return chances.atLeast(PASS);
    }
}
