package tamabako.insight.pace;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/// Finds the likeliest pace of one pupil by the method of Gauss and Newton, each time weighed anew
/// by how far off it is (Student's spread with four degrees of freedom).
final class PaceFit {

    private static final double DEGREES = 4;
    private static final int ROUNDS = 30;
    private static final double NO_MORE = 1e-6;

    /// How many times the population's noise is worth.
    private static final double NOISE_BEFORE = 10;

    /// A normal spread of this standard deviation is taken for Student's with scale 1: 5 u^2 / (4 +
    /// u^2) is 1 in its mean.
    private static final double OF_SCALE = 1.2034;

    private static final double SYMMETRY = 1e-6;
    private static final double POSITIVE = 1e-12;

    private final List<PaceAnswer> answers;
    private final double[] weights;
    private final PacePopulation population;
    private final double[] own = new double[Part.COUNT + 1];
    private double scale;

    PaceFit(PaceTally tally, PacePopulation population, long today) {
        this.answers = tally.answers();
        this.weights = tally.weights(population.forgetting(), today);
        this.population = population;
        this.scale = population.noise() / OF_SCALE;
        own[Part.COUNT] = -middle();
    }

    /// The middle of how much longer the pupil takes than the middle one: a good place to begin.
    private double middle() {
        double[] off = answers.stream().mapToDouble(this::off).sorted().toArray();
        return off.length == 0 ? 0 : off[off.length / 2];
    }

    private double off(PaceAnswer answer) {
        double[] shares = PaceModel.shares(population, own, answer.parts().seconds());
        return Math.log(answer.seconds()) - shares[Part.COUNT];
    }

    /// Finds it.
    PupilPace fit() {
        RealMatrix information = prior();
        for (int round = 0; round < ROUNDS; round++) {
            information = prior();
            double[] gradient = new double[own.length];
            for (int i = 0; i < own.length; i++) {
                gradient[i] = -information.getEntry(i, i) * own[i];
            }
            addAnswers(information, gradient);
            double[] step =
                    solved(information)
                            .getSolver()
                            .solve(new ArrayRealVector(gradient, false))
                            .toArray();
            double longest = 0;
            for (int i = 0; i < own.length; i++) {
                own[i] += step[i];
                longest = Math.max(longest, Math.abs(step[i]));
            }
            if (longest < NO_MORE) {
                break;
            }
        }
        double[][] covariance = solved(information).getSolver().getInverse().getData();
        return pace(new PaceModel(population, own, covariance, scale * OF_SCALE));
    }

    private RealMatrix prior() {
        RealMatrix prior = new Array2DRowRealMatrix(own.length, own.length);
        for (int i = 0; i < Part.COUNT; i++) {
            prior.setEntry(i, i, 1 / (population.part() * population.part()));
        }
        prior.setEntry(Part.COUNT, Part.COUNT, 1 / (population.speed() * population.speed()));
        return prior;
    }

    private void addAnswers(RealMatrix information, double[] gradient) {
        double squares = NOISE_BEFORE * square(population.noise() / OF_SCALE);
        double count = NOISE_BEFORE;
        double[][] slopes = new double[answers.size()][];
        double[] off = new double[answers.size()];
        for (int i = 0; i < off.length; i++) {
            slopes[i] = PaceModel.shares(population, own, answers.get(i).parts().seconds());
            off[i] = Math.log(answers.get(i).seconds()) - slopes[i][Part.COUNT];
            slopes[i][Part.COUNT] = -1;
            double robust = robust(off[i]);
            squares += weights[i] * robust * off[i] * off[i];
            count += weights[i];
        }
        scale = Math.sqrt(squares / count);
        // Of Student's spread each time tells (n + 1) / (n + 3) of what its scale alone would.
        double told = (DEGREES + 1) / (DEGREES + 3) / square(scale);
        for (int i = 0; i < off.length; i++) {
            double robust = weights[i] * robust(off[i]) / square(scale);
            for (int one = 0; one < own.length; one++) {
                gradient[one] += robust * off[i] * slopes[i][one];
                for (int other = 0; other < own.length; other++) {
                    information.addToEntry(
                            one, other, weights[i] * told * slopes[i][one] * slopes[i][other]);
                }
            }
        }
    }

    private double robust(double off) {
        return (DEGREES + 1) / (DEGREES + square(off / scale));
    }

    private static double square(double number) {
        return number * number;
    }

    private static CholeskyDecomposition solved(RealMatrix matrix) {
        return new CholeskyDecomposition(matrix, SYMMETRY, POSITIVE);
    }

    private PupilPace pace(PaceModel model) {
        double[] typical = new double[Part.COUNT];
        int[] steps = new int[Part.COUNT];
        double[] seconds = new double[Part.COUNT];
        for (PaceAnswer answer : answers) {
            double[] shares = PaceModel.shares(population, own, answer.parts().seconds());
            for (int i = 0; i < Part.COUNT; i++) {
                typical[i] += shares[i] / answers.size();
                steps[i] += answer.parts().steps(Part.at(i));
                seconds[i] += answer.parts().seconds()[i];
            }
        }
        if (answers.isEmpty()) {
            Arrays.fill(typical, 0);
        }
        return new PupilPace(answers.size(), model, typical, steps, seconds);
    }
}
