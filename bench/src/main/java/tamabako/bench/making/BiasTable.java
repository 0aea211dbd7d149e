package tamabako.bench.making;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import tamabako.frame.Technique;
import tamabako.problems.making.column.Drawing;
import tamabako.problems.making.draw.Draws;

/// Whether rich columns are made as evenly as plain rejection leaves them: means of both, side by
/// side, with the standard error of their difference. And how far columns are from even that have
/// to be moved about.
///
/// `BiasTable [FEW [MANY]]`: how many columns by rejection, and how many drawn.
public final class BiasTable {

    private static final int ROWS = 10;

    /// Each technique so many times: too seldom met by chance to be drawn evenly.
    private static final int RICHER = 11;

    private static final Draws RICHER_DRAWS = new Draws(2);

    private BiasTable() {}

    /// Prints the tables as Markdown.
    public static void main(String[] arguments) {
        int few = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1000;
        int many = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 300_000;
        Thrown thrown = new Thrown(Task.RICH);
        Drawing rich = Ours.drawing(Task.RICH.wish());
        compare("plain rejection", _ -> thrown.plain(), few, rich, many);
        Drawing richer = Ours.drawing(Task.rich(RICHER));
        compare("rich columns that are richer", _ -> richer(rich), few, richer, few * 10);
    }

    private static void compare(
            String reference, LongFunction<long[]> drawn, int few, Drawing drawing, int many) {
        Means right = new Means();
        for (int i = 0; i < few; i++) {
            right.add(drawn.apply(i));
        }
        Means made = new Means();
        Draws draws = new Draws(1);
        for (int i = 0; i < many; i++) {
            made.add(Ours.draw(drawing, draws, new long[ROWS]));
        }
        say(
                "%n%,d columns by %s; %,d drawn%s.%n%n"
                        + "| mean of | %s | drawn | difference | in standard errors |%n"
                        + "| --- | --- | --- | --- | --- |",
                few,
                reference,
                many,
                drawing.isEven() ? "" : " by moving digits about",
                reference);
        for (int i = 0; i < Means.NAMES.size(); i++) {
            double difference = made.mean(i) / right.mean(i) - 1;
            double error = Math.hypot(made.error(i), right.error(i)) / right.mean(i);
            say(
                    "| %s | %.3f | %.3f | %+.2f %% ± %.2f %% | %+.1f |",
                    Means.NAMES.get(i),
                    right.mean(i),
                    made.mean(i),
                    100 * difference,
                    100 * error,
                    difference / error);
        }
        say(
                "%nPatterns of signs, chi-square less its mean in standard deviations: %+.1f",
                right.surprise(made));
    }

    /// A rich column that has more of each technique: as even as rich columns are.
    private static long[] richer(Drawing rich) {
        Hand hand = new Hand();
        while (true) {
            long[] rows = Ours.draw(rich, RICHER_DRAWS, new long[ROWS]);
            if (hand.work(rows)
                    && Arrays.stream(Technique.values())
                            .allMatch(technique -> hand.count(technique) >= RICHER)) {
                return rows;
            }
        }
    }

    private static void say(String format, Object... values) {
        System.out.printf(Locale.ROOT, format + "%n", values);
    }

    /// Sums of what is looked at, over many columns.
    private static final class Means {

        static final List<String> NAMES = names();

        private final Hand hand = new Hand();
        private final double[] sums = new double[NAMES.size()];
        private final double[] squares = new double[NAMES.size()];
        private final Map<String, Integer> patterns = new TreeMap<>();
        private int columns;

        private static List<String> names() {
            List<String> names = new ArrayList<>(List.of("digits", "strokes"));
            for (Technique technique : Technique.values()) {
                names.add("steps " + technique.word());
            }
            names.add("answer, its digits");
            names.addAll(
                    List.of(
                            "first minus row",
                            "last minus row",
                            "all minus rows, mean",
                            "minus rows side by side"));
            return names;
        }

        void add(long[] rows) {
            if (!Task.RICH.isGrantedBy(rows, hand)) {
                throw new IllegalStateException("Not as asked: " + Arrays.toString(rows));
            }
            int i = 0;
            add(i++, digits(rows));
            add(i++, hand.strokes());
            for (Technique technique : Technique.values()) {
                add(i++, hand.count(technique));
            }
            add(i++, hand.digits());
            int[] minus = IntStream.rangeClosed(1, ROWS).filter(row -> rows[row - 1] < 0).toArray();
            add(i++, minus[0]);
            add(i++, minus[minus.length - 1]);
            add(i++, Arrays.stream(minus).average().orElseThrow());
            add(i, Arrays.stream(minus).filter(row -> rows[row - 2] < 0).count());
            patterns.merge(Arrays.toString(minus), 1, Integer::sum);
            columns++;
        }

        private static int digits(long[] rows) {
            return Arrays.stream(rows).mapToInt(row -> Long.toString(Math.abs(row)).length()).sum();
        }

        private void add(int index, double value) {
            sums[index] += value;
            squares[index] += value * value;
        }

        /// Chi-square of the patterns of signs of both, less its mean, in standard deviations.
        double surprise(Means other) {
            Set<String> all = new TreeSet<>(patterns.keySet());
            all.addAll(other.patterns.keySet());
            double share = Math.sqrt((double) other.columns / columns);
            double sum = 0;
            for (String one : all) {
                int here = patterns.getOrDefault(one, 0);
                int there = other.patterns.getOrDefault(one, 0);
                sum += Math.pow(here * share - there / share, 2) / (here + there);
            }
            double freedom = all.size() - 1.0;
            return (sum - freedom) / Math.sqrt(2 * freedom);
        }

        double mean(int index) {
            return sums[index] / columns;
        }

        /// The standard error of the mean.
        double error(int index) {
            double mean = mean(index);
            return Math.sqrt((squares[index] / columns - mean * mean) / (columns - 1));
        }
    }
}
