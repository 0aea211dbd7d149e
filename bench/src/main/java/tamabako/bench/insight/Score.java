package tamabako.bench.insight;

import java.util.List;
import java.util.Locale;

/// How often something was named first, and among the first three.
final class Score {

    private int asked;
    private int first;
    private int three;

    /// Notes one ranking.
    <T> void note(List<T> ranked, T truth) {
        int rank = ranked.indexOf(truth);
        asked++;
        first += rank == 0 ? 1 : 0;
        three += rank >= 0 && rank < 3 ? 1 : 0;
    }

    /// Notes whether something was so.
    void note(boolean so) {
        asked++;
        first += so ? 1 : 0;
    }

    int asked() {
        return asked;
    }

    double first() {
        return (double) first / asked;
    }

    String share() {
        return String.format(Locale.ROOT, "%.3f", first());
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.3f / %.3f", first(), (double) three / asked);
    }
}
