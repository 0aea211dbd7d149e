package tamabako.insight.readiness;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/// What is believed of one pupil after some answers: how often slips are made, and how long work
/// takes, in every field.
///
/// Older answers count less: [#KEPT] a day.
public final class Standing {

    /// What an answer still counts after one day more.
    public static final double KEPT = 0.985;

    private final Variety variety;
    private final List<List<Worked>> answers;
    private final List<double[]> weights;
    private final double days;
    private final SlipBelief slips;
    private final PaceBelief pace;
    private final PaceShape shape;

    private Standing(List<List<Worked>> answers, Variety variety, OptionalLong today) {
        this.variety = variety;
        this.shape = new PaceShape(answers, today);
        this.answers = answers.stream().map(some -> some.stream().map(shape::of).toList()).toList();
        this.weights = answers.stream().map(some -> weights(some, today)).toList();
        long seen =
                answers.stream()
                        .flatMap(List::stream)
                        .filter(answer -> answer.day().isPresent())
                        .mapToLong(answer -> answer.day().getAsLong())
                        .distinct()
                        .count();
        this.days = seen == 0 ? Double.POSITIVE_INFINITY : seen;
        this.slips = new SlipBelief(answers, weights, variety.slips());
        this.pace = new PaceBelief(this.answers, weights, variety, dayVariance(variety.pace()));
    }

    /// The standing of the pupil who gave `answers`, as of the last of their days.
    public static Standing of(List<Worked> answers, Variety variety) {
        OptionalLong last =
                answers.stream()
                        .filter(answer -> answer.day().isPresent())
                        .mapToLong(answer -> answer.day().getAsLong())
                        .max();
        return of(answers, variety, last);
    }

    /// The standing of the pupil who gave `answers`, as of a day counted from 1970; answers of
    /// later days count as of that day.
    public static Standing of(List<Worked> answers, Variety variety, OptionalLong today) {
        List<List<Worked>> byField = new ArrayList<>();
        for (Field field : Field.all()) {
            byField.add(answers.stream().filter(one -> one.field().equals(field)).toList());
        }
        return new Standing(byField, variety, today);
    }

    private static double[] weights(List<Worked> answers, OptionalLong today) {
        return answers.stream()
                .mapToDouble(answer ->
                        today.isPresent() && answer.day().isPresent()
                                ? Math.pow(
                                        KEPT,
                                        (double)
                                                Math.max(
                                                        0,
                                                        today.getAsLong()
                                                                - answer.day().getAsLong()))
                                : 1)
                .toArray();
    }

    /// The variance of the day of the exam, together with that of the days seen so far: a pupil of
    /// whom one day is known may have had a good one.
    private double dayVariance(Variety.Trait trait) {
        return trait.day() * trait.day() * (1 + 1 / days);
    }

    /// The spread of how often slips are made between the day of the exam and those seen.
    double slipsOfDay() {
        return Math.sqrt(dayVariance(variety.slips()));
    }

    SlipBelief slips() {
        return slips;
    }

    PaceBelief pace() {
        return pace;
    }

    PaceShape shape() {
        return shape;
    }

    Variety variety() {
        return variety;
    }

    /// How many answers there are in a field.
    public int answers(Field field) {
        return answers.get(Field.all().indexOf(field)).size();
    }

    /// How many of them have their time.
    public int timed(Field field) {
        return (int)
                answers.get(Field.all().indexOf(field)).stream()
                        .filter(answer -> answer.pace().isPresent())
                        .count();
    }

    /// How much the answers in a field say about problems in which so many slips are expected: what
    /// as many of those would say. Easier and older problems say less.
    double worth(Field field, double expected) {
        int index = Field.all().indexOf(field);
        double sum = 0;
        for (int i = 0; i < weights.get(index).length; i++) {
            double slips = answers.get(index).get(i).slips();
            sum += weights.get(index)[i] * Math.min(1, slips / expected);
        }
        return sum;
    }
}
