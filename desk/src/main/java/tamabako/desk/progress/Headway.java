package tamabako.desk.progress;

import java.util.List;
import java.util.Optional;

/// How the share of right answers has moved: the older half of a pupil's days beside the newer.
///
/// @param before the share of right answers in the older half, 0 to 1
/// @param lately the share in the newer half
/// @param errors by how many standard errors it rose; below 0 if it fell
record Headway(double before, double lately, double errors) {

    /// So many answers each half must have.
    static final int ENOUGH = 40;

    /// From so many standard errors on the difference is said not to be chance: one in twenty.
    private static final double SURE = 1.645;

    /// Of the answers of these days, the oldest first; empty where there are too few.
    static Optional<Headway> of(List<Gathered.Day> days) {
        int all = days.stream().mapToInt(Gathered.Day::answers).sum();
        int first = 0;
        int firstRight = 0;
        int second = 0;
        int secondRight = 0;
        for (Gathered.Day day : days) {
            if (2 * first + day.answers() <= all) {
                first += day.answers();
                firstRight += day.right();
            } else {
                second += day.answers();
                secondRight += day.right();
            }
        }
        if (first < ENOUGH || second < ENOUGH) {
            return Optional.empty();
        }
        double before = (double) firstRight / first;
        double lately = (double) secondRight / second;
        double together = (double) (firstRight + secondRight) / (first + second);
        double error = Math.sqrt(together * (1 - together) * (1.0 / first + 1.0 / second));
        return Optional.of(new Headway(before, lately, error == 0 ? 0 : (lately - before) / error));
    }

    /// Whether it rose by more than chance would have it.
    boolean better() {
        return errors >= SURE;
    }

    /// Whether it did not rise at all.
    boolean still() {
        return errors <= 0;
    }
}
