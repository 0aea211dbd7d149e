package tamabako.insight.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;

/// Chooses exercises one after another: the section by how much it matters, and in it what is worth
/// most for a pupil.
///
/// @param needs the sections of the exam
/// @param learning how practice tells
/// @param examShare the least share of exercises as in the exam, 0 to 1
/// @param pupilsEach how many of the pupils that one pupil may be are looked at for each choice, 1
///   or more: with few what is uncertain is tried more often
public record Choice(List<Need> needs, Learning learning, double examShare, int pupilsEach) {

    /// A quarter as in the exam mixes the work and shows where the pupil stands.
    public static final double USUAL_EXAM_SHARE = 0.25;

    /// So many pupils are looked at for each choice.
    public static final int USUAL_PUPILS = 1;

    /// No drill takes more of a plan than this: what is mixed is kept longer. Source: Rohrer and
    /// others (2020), a trial with 54 classes.
    private static final double MOST_SHARE = 1 / 3.0;

    /// Which part of a plan is shared out evenly over the sections, the rest by what matters.
    private static final double FOR_ALL = 0.3;

    public Choice {
        needs = List.copyOf(needs);
    }

    /// `count` of `exercises`, in the order they are to be worked: no two running have the same
    /// focus, where there are several.
    ///
    /// @param pupils draws one of the pupils that this one may be: factors as a [Load] has them
    public List<Exercise> of(List<Exercise> exercises, int count, Supplier<double[]> pupils) {
        List<Exercise> chosen = new ArrayList<>();
        double[] left = new double[Load.SIZE];
        Arrays.fill(left, 1);
        int exams = 0;
        int wanted = (int) Math.ceil(examShare * count - 1e-9);
        for (int i = 0; i < count; i++) {
            List<double[]> drawn = drawn(pupils, left);
            boolean due = exams < wanted * (i + 1) / count || wanted - exams >= count - i;
            Exercise next = best(allowed(exercises, chosen, due, count), drawn);
            chosen.add(next);
            exams += next.focus().isAsInExam() ? 1 : 0;
            for (int strand = 0; strand < left.length; strand++) {
                left[strand] *= Math.exp(-learning.rate() * next.load().times().get(strand));
            }
        }
        return chosen;
    }

    /// Those that may stand next: of the section that is owed most, as in the exam if that is due,
    /// and of another focus than the last where there is one.
    private List<Exercise> allowed(
            List<Exercise> exercises, List<Exercise> chosen, boolean due, int count) {
        List<Exercise> others =
                exercises.stream()
                        .filter(one ->
                                chosen.isEmpty() || !one.focus().equals(chosen.getLast().focus()))
                        .filter(one ->
                                one.focus().isAsInExam()
                                        || times(one, chosen) < Math.ceil(MOST_SHARE * count))
                        .toList();
        List<Exercise> exams = others.stream().filter(one -> one.focus().isAsInExam()).toList();
        List<Exercise> some = due && !exams.isEmpty() ? exams : others;
        if (some.isEmpty()) {
            return exercises;
        }
        String section =
                some.stream()
                        .max(Comparator.comparingDouble(one -> owed(one.section(), chosen)))
                        .orElseThrow()
                        .section();
        return some.stream().filter(one -> one.section().equals(section)).toList();
    }

    private static long times(Exercise exercise, List<Exercise> chosen) {
        return chosen.stream().filter(one -> one.focus().equals(exercise.focus())).count();
    }

    /// How many problems more a section should have by now: as it matters, with some for all.
    private double owed(String section, List<Exercise> chosen) {
        double sum = needs.stream().mapToDouble(Need::weight).sum();
        double weight =
                needs.stream()
                        .filter(need -> section.equals(need.section()))
                        .mapToDouble(Need::weight)
                        .sum();
        double part = sum == 0 ? 1.0 / needs.size() : weight / sum;
        double share = FOR_ALL / needs.size() + (1 - FOR_ALL) * part;
        long had = chosen.stream().filter(one -> one.section().equals(section)).count();
        return share * (chosen.size() + 1) - had;
    }

    private List<double[]> drawn(Supplier<double[]> pupils, double[] left) {
        List<double[]> drawn = new ArrayList<>();
        for (int i = 0; i < pupilsEach; i++) {
            double[] factors = pupils.get();
            for (int strand = 0; strand < factors.length; strand++) {
                factors[strand] *= left[strand];
            }
            drawn.add(factors);
        }
        return drawn;
    }

    private Exercise best(List<Exercise> exercises, List<double[]> drawn) {
        Exercise best = exercises.getFirst();
        double most = -1;
        for (Exercise exercise : exercises) {
            double worth = 0;
            for (double[] factors : drawn) {
                worth += worth(exercise, factors);
            }
            if (worth > most) {
                most = worth;
                best = exercise;
            }
        }
        return best;
    }

    /// What one second of an exercise does for the goal of a pupil with these factors.
    public double worth(Exercise exercise, double[] factors) {
        double sum = 0;
        for (Need need : needs) {
            double gone = 0;
            double all = 0;
            for (int strand = 0; strand < factors.length; strand++) {
                double slips = need.load().expected().get(strand) * factors[strand];
                all += slips;
                gone += slips * learning.gone(exercise.load().times().get(strand));
            }
            sum += all == 0 ? 0 : need.weight() * gone / all;
        }
        return sum / exercise.load().seconds();
    }
}
