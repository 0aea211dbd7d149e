package tamabako.insight.estimate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/// What answers to the same problems come to: all that the models of equal steepness need.
///
/// @param right how many had each problem right
/// @param persons how many had no, one, two ... problems right; one longer than `right`
public record AnswerSums(List<Integer> right, List<Integer> persons) {

    public AnswerSums {
        right = List.copyOf(right);
        persons = List.copyOf(persons);
        if (persons.size() != right.size() + 1) {
            throw new IllegalArgumentException(
                    "%d problems have %d scores, not %d."
                            .formatted(right.size(), right.size() + 1, persons.size()));
        }
        long all = right.stream().mapToLong(n -> n).sum();
        long scored = 0;
        for (int score = 0; score < persons.size(); score++) {
            scored += (long) score * persons.get(score);
        }
        if (all != scored) {
            throw new IllegalArgumentException(
                    "The problems have %d right answers, the persons %d.".formatted(all, scored));
        }
    }

    /// Sums the answers of each person; true is right.
    public static AnswerSums of(List<List<Boolean>> answers) {
        if (answers.isEmpty()) {
            throw new IllegalArgumentException("There are no answers.");
        }
        int problems = answers.getFirst().size();
        List<Integer> right = new ArrayList<>(Collections.nCopies(problems, 0));
        List<Integer> persons = new ArrayList<>(Collections.nCopies(problems + 1, 0));
        for (List<Boolean> one : answers) {
            if (one.size() != problems) {
                throw new IllegalArgumentException(
                        "One person answered %d problems, another %d."
                                .formatted(problems, one.size()));
            }
            int score = 0;
            for (int i = 0; i < problems; i++) {
                if (one.get(i)) {
                    right.set(i, right.get(i) + 1);
                    score++;
                }
            }
            persons.set(score, persons.get(score) + 1);
        }
        return new AnswerSums(right, persons);
    }

    /// How many problems there are.
    public int problems() {
        return right.size();
    }
}
