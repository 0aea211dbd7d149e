package tamabako.records.demo;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.Habit;
import tamabako.insight.simulation.ProductPupil;
import tamabako.insight.simulation.QuotientPupil;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipKind;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.effort.Effort;
import tamabako.problems.marking.Marker;
import tamabako.problems.marking.WritingRules;
import tamabako.problems.words.Sayable;
import tamabako.records.Work.MarkedAnswer;

/// A simulated pupil, who works bead by bead, slips where chance has it and takes time.
///
/// @param name given name
/// @param language the language that the pupil reads
/// @param slips how many times as often as usual the pupil slips
/// @param usual the slip that the pupil makes far more often than others
/// @param tempo how many times as long as a practised pupil of about the third grade the pupil
///   takes
/// @param habit a wrong rule that the pupil follows, or none
record DemoPupil(
        String name, Locale language, double slips, SlipKind usual, double tempo, Habit habit) {

    /// How many times as often as the others the usual slip is made.
    private static final double USUAL = 8;

    /// How much more is slipped for each week that lies back: pupils learn.
    private static final double LEARNED_IN_A_WEEK = 0.08;

    /// How times vary from one problem to another: the standard deviation of their logarithms.
    private static final double UNEVEN = 0.15;

    DemoPupil(String name, Locale language, double slips, SlipKind usual, double tempo) {
        this(name, language, slips, usual, tempo, Habit.NONE);
    }

    /// What the pupil hands in for `problems`, marked.
    ///
    /// @param weeksAgo how many weeks ago, 0 or more
    List<MarkedAnswer> work(List<Problem> problems, double weeksAgo, SplittableRandom chance) {
        Rates rates = rates(slips * (1 + LEARNED_IN_A_WEEK * weeksAgo));
        List<MarkedAnswer> answers = new ArrayList<>();
        for (Problem problem : problems) {
            String written = write(problem, Fate.by(rates, chance, habit));
            String mark = Sayable.word(Marker.mark(problem, written, WritingRules.EASY).getClass());
            answers.add(new MarkedAnswer(written, mark, Optional.of(took(problem, chance))));
        }
        return answers;
    }

    private Rates rates(double times) {
        Rates shipped = Rates.shipped();
        return shipped.with(kind -> {
            double rate = shipped.of(kind);
            return switch (kind) {
                // Not a rate but a share, of what nobody can explain.
                case NONE_KNOWN -> rate;
                default -> Math.min(0.3, rate * times * (kind == usual ? USUAL : 1));
            };
        });
    }

    private Duration took(Problem problem, SplittableRandom chance) {
        double seconds = Effort.of(problem).seconds() * tempo;
        double uneven = Math.exp(UNEVEN * chance.nextGaussian());
        return Duration.ofMillis(Math.round(1000 * seconds * uneven));
    }

    /// What the pupil writes; nothing where the pupil is stuck.
    private static String write(Problem problem, Fate fate) {
        OptionalLong written =
                switch (problem) {
                    case Column column ->
                            ColumnPupil.writes(
                                    column.rows().stream().map(BigDecimal::longValueExact).toList(),
                                    fate);
                    case Product product ->
                            ProductPupil.writes(
                                    product.multiplicand().longValueExact(),
                                    product.multiplier().longValueExact(),
                                    fate);
                    case Quotient quotient ->
                            QuotientPupil.writes(
                                    quotient.dividend().longValueExact(),
                                    quotient.divisor().longValueExact(),
                                    fate);
                    case Root root ->
                            throw new IllegalArgumentException(
                                    "The demo class draws no roots, not " + root);
                };
        return written.isPresent() ? Long.toString(written.getAsLong()) : "";
    }
}
