package tamabako.insight.simulation;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import tamabako.insight.slip.Move;

/// How long a simulated pupil takes: so many seconds for each step that the hand begins, by its
/// move, and for looking and writing.
///
/// The seconds are of our own choosing, apart from those by which times are expected.
///
/// @param steps the seconds of one step, by move
/// @param number the seconds of looking at one number
/// @param around the seconds of finding the problem and writing the answer
/// @param noise the standard deviation of the logarithm of the time of a problem
public record PupilClock(Map<Move, Double> steps, double number, double around, double noise) {

    public PupilClock {
        steps = Map.copyOf(steps);
    }

    /// A usual pupil.
    public static PupilClock usual(double noise) {
        Map<Move, Double> steps = new EnumMap<>(Move.class);
        for (Move move : Move.values()) {
            steps.put(move, usual(move));
        }
        return new PupilClock(steps, 0.9, 5, noise);
    }

    private static double usual(Move move) {
        return switch (move) {
            case ADD_DIRECT -> 0.35;
            case ADD_FIVE_COMPLEMENT -> 0.5;
            case ADD_TEN_COMPLEMENT -> 0.55;
            case ADD_TEN_WITH_FIVE -> 0.8;
            case TAKE_DIRECT -> 0.38;
            case TAKE_FIVE_COMPLEMENT -> 0.55;
            case TAKE_TEN_COMPLEMENT -> 0.6;
            case TAKE_TEN_WITH_FIVE -> 0.85;
            case CARRY_RUNS_ON -> 0.6;
        };
    }

    /// A pupil drawn from pupils who differ altogether by `speed`, and in each part by `part`:
    /// standard deviations of natural logarithms.
    public PupilClock drawn(double speed, double part, SplittableRandom chance) {
        double slower = Math.exp(speed * chance.nextGaussian());
        Map<Move, Double> own = new EnumMap<>(Move.class);
        for (Move move : Move.values()) {
            own.put(move, of(move) * slower * Math.exp(part * chance.nextGaussian()));
        }
        double others = slower * Math.exp(part * chance.nextGaussian());
        return new PupilClock(own, number * others, around * others, noise);
    }

    /// The seconds of one step by `move`.
    public double of(Move move) {
        return Objects.requireNonNull(steps.get(move));
    }

    /// The middle time of work that has been done as `fate` tells, with so many numbers.
    public double middle(Fate fate, int numbers) {
        double seconds = around + number * numbers;
        for (Move move : Move.values()) {
            seconds += of(move) * fate.stepsBy(move);
        }
        return seconds;
    }

    /// The time that it took.
    public double seconds(Fate fate, int numbers, SplittableRandom chance) {
        return middle(fate, numbers) * Math.exp(noise * chance.nextGaussian());
    }
}
