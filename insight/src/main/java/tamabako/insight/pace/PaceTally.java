package tamabako.insight.pace;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import tamabako.insight.mastery.Forgetting;

/// Gathers the times of one pupil who worked in one manner, one after another.
public final class PaceTally {

    private final List<PaceAnswer> answers = new ArrayList<>();

    /// Adds a time.
    public void add(PaceAnswer answer) {
        answers.add(answer);
    }

    /// How many times there are.
    public int problems() {
        return answers.size();
    }

    List<PaceAnswer> answers() {
        return answers;
    }

    /// The last day of which a time is known; 0 where there is none.
    public long lastDay() {
        return answers.stream()
                .map(PaceAnswer::day)
                .flatMapToLong(OptionalLong::stream)
                .max()
                .orElse(0);
    }

    /// How much each time still counts on `today`. Times of which the day is not known count as if
    /// they were of that day.
    double[] weights(Forgetting forgetting, long today) {
        return answers.stream()
                .mapToDouble(answer -> forgetting.left(today - answer.day().orElse(today)))
                .toArray();
    }

    /// What the times show together on the last day of which one is known.
    public PupilPace told(PacePopulation population) {
        return told(population, lastDay());
    }

    /// What they show on `today`, in days since 1970.
    public PupilPace told(PacePopulation population, long today) {
        return new PaceFit(this, population, today).fit();
    }
}
