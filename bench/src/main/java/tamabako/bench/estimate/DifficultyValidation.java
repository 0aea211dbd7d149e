package tamabako.bench.estimate;

import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import tamabako.insight.estimate.AnswerSums;
import tamabako.insight.estimate.CrossedRasch;
import tamabako.insight.estimate.Estimate;
import tamabako.insight.estimate.Features;
import tamabako.insight.estimate.MarginalRasch;
import tamabako.insight.estimate.PermutedDesigns;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.Habit;
import tamabako.insight.slip.Rates;

/// How far counts of techniques tell how hard columns are: simulated pupils, features of one half
/// of the columns, difficulties of the other half foretold.
///
/// Pupils slip more or less often than the shipped rates, all kinds alike.
///
/// `DifficultyValidation [PUPILS [COLUMNS]]`
public final class DifficultyValidation {

    private static final long SEED = 20261130;
    private static final double PUPILS_DIFFER = 0.6;
    private static final int DESIGNS = 1000;

    private final List<Counted> columns;
    private final AnswerSums first;
    private final List<Double> firstHard;
    private final List<Double> restHard;

    private DifficultyValidation(int pupils, int columns) {
        SplittableRandom chance = new SplittableRandom(SEED);
        this.columns = Stream.generate(() -> Counted.drawn(chance)).limit(columns).toList();
        List<List<Boolean>> answers = Stream.generate(() -> answers(chance)).limit(pupils).toList();
        first = sums(answers, 0, columns / 2);
        firstHard = difficulties(first);
        restHard = difficulties(sums(answers, columns / 2, columns));
    }

    /// Prints the table; takes half a minute.
    public static void main(String[] arguments) {
        int pupils = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 400;
        int columns = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 60;
        DifficultyValidation validation = new DifficultyValidation(pupils, columns);
        say("%d pupils, %d columns", pupils, columns);
        say("difficulties spread by %.2f", spread(validation.firstHard));
        SplittableRandom chance = new SplittableRandom(SEED);
        List<Double> drawn = chance.doubles(columns).boxed().toList();
        validation.tell("digits", column -> List.of((double) column.digits()));
        validation.tell("logarithm of digits", column -> List.of(Math.log(column.digits())));
        validation.tell("counts", Counted::plain);
        validation.tell("logarithms of counts", Counted::logarithms);
        validation.tell(
                "drawn numbers", column -> List.of(drawn.get(validation.columns.indexOf(column))));
    }

    private List<Boolean> answers(SplittableRandom chance) {
        double often = Math.exp(PUPILS_DIFFER * chance.nextGaussian());
        Rates usual = Rates.shipped();
        Rates own = usual.with(kind -> Math.min(0.5, often * usual.of(kind)));
        return columns.stream()
                .map(column -> {
                    long right = column.rows().stream().mapToLong(row -> row).sum();
                    return ColumnPupil.writes(column.rows(), Fate.by(own, chance, Habit.NONE))
                            .equals(OptionalLong.of(right));
                })
                .toList();
    }

    private static AnswerSums sums(List<List<Boolean>> answers, int from, int to) {
        return AnswerSums.of(answers.stream().map(one -> one.subList(from, to)).toList());
    }

    private static List<Double> difficulties(AnswerSums sums) {
        return MarginalRasch.each(sums).orElseThrow().difficulties().values();
    }

    private void tell(String name, Function<Counted, List<Double>> of) {
        int half = columns.size() / 2;
        List<List<Double>> rows = columns.stream().map(of).toList();
        List<List<Double>> constant =
                rows.stream()
                        .map(row -> Stream.concat(Stream.of(1.0), row.stream()).toList())
                        .toList();
        PermutedDesigns permuted =
                PermutedDesigns.of(Features.of(rows.subList(0, half)), first, DESIGNS, SEED)
                        .orElseThrow();
        CrossedRasch.Fit fit =
                CrossedRasch.by(Features.of(constant.subList(0, half)), first).orElseThrow();
        List<Double> foretold =
                constant.subList(half, columns.size()).stream()
                        .map(row -> sum(row, fit.effects()))
                        .toList();
        say(
                "| %s | %.3f | %.3f | %.3f | %.2f | %.3f |",
                name,
                permuted.correlation(),
                permuted.byChance().get(DESIGNS * 95 / 100),
                permuted.share(),
                fit.error(),
                correlation(foretold, restHard));
    }

    private static double sum(List<Double> row, List<Estimate> effects) {
        return IntStream.range(0, row.size())
                .mapToDouble(i -> row.get(i) * effects.get(i).value())
                .sum();
    }

    private static double correlation(List<Double> some, List<Double> others) {
        return new PearsonsCorrelation().correlation(array(some), array(others));
    }

    private static double spread(List<Double> numbers) {
        return new DescriptiveStatistics(array(numbers)).getStandardDeviation();
    }

    private static double[] array(List<Double> numbers) {
        return numbers.stream().mapToDouble(x -> x).toArray();
    }

    private static void say(String format, Object... values) {
        System.out.printf(Locale.ROOT, format + "%n", values);
    }
}
