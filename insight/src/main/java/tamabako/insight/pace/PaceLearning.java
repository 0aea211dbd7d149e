package tamabako.insight.pace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/// Learns how fast pupils in general are from the times of many: every pupil is fitted under the
/// population, and the population follows from all of them, in turns.
final class PaceLearning {

    /// How many pupils the spread from before is worth.
    private static final double BEFORE = 5;

    private static final int ROUNDS = 12;
    private static final double LEAST = 0.02;

    /// So many tell enough: those with the most times.
    private static final int MOST_PUPILS = 400;

    private PaceLearning() {}

    static PacePopulation learn(PacePopulation before, List<PaceTally> pupils) {
        List<PaceTally> timed =
                pupils.stream()
                        .filter(pupil -> pupil.problems() >= PupilPace.ENOUGH)
                        .sorted(Comparator.comparingInt(PaceTally::problems).reversed())
                        .limit(MOST_PUPILS)
                        .toList();
        PacePopulation population = before;
        for (int round = 0; round < ROUNDS && !timed.isEmpty(); round++) {
            population = next(before, population, timed);
        }
        return population;
    }

    private static PacePopulation next(
            PacePopulation before, PacePopulation population, List<PaceTally> pupils) {
        List<PaceModel> models =
                pupils.parallelStream().map(pupil -> pupil.told(population).model()).toList();
        double speed = 0;
        for (PaceModel model : models) {
            speed += model.own()[Part.COUNT] / models.size();
        }
        List<Double> means = new ArrayList<>();
        double ofParts = 0;
        double ofSpeed = 0;
        double noise = 0;
        for (int part = 0; part < Part.COUNT; part++) {
            double slower = 0;
            for (PaceModel model : models) {
                slower += model.own()[part] / (models.size() + BEFORE);
                ofParts += square(model.own()[part]) + model.covariance()[part][part];
            }
            means.add(population.means().get(part) + slower - speed);
        }
        for (PaceModel model : models) {
            ofSpeed +=
                    square(model.own()[Part.COUNT] - speed)
                            + model.covariance()[Part.COUNT][Part.COUNT];
            noise += square(model.noise());
        }
        int count = models.size();
        return new PacePopulation(
                means,
                mixed(before.speed(), ofSpeed, count),
                mixed(before.part(), ofParts / Part.COUNT, count),
                mixed(before.noise(), noise, count),
                before.forgetting());
    }

    private static double mixed(double before, double squares, int count) {
        return Math.max(LEAST, Math.sqrt((BEFORE * square(before) + squares) / (BEFORE + count)));
    }

    private static double square(double number) {
        return number * number;
    }
}
