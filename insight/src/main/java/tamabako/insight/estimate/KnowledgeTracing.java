package tamabako.insight.estimate;

import java.util.ArrayList;
import java.util.List;

/// Whether a pupil knows something, from right and wrong answers one after the other: a model of
/// two states, known or not.
///
/// A baseline that judgements are held against.
///
/// Source: Corbett and Anderson, User Modeling and User-Adapted Interaction 4 (1995); forgetting
/// after Khajah, Lindsey and Mozer (2016).
///
/// @param knownAtFirst chance that it is known before the first answer
/// @param learned chance that it is learned between two answers
/// @param guessed chance of a right answer where it is not known
/// @param slipped chance of a wrong answer where it is known
/// @param forgotten chance that it is forgotten between two answers
public record KnowledgeTracing(
        double knownAtFirst, double learned, double guessed, double slipped, double forgotten) {

    public KnowledgeTracing {
        for (double chance : new double[] {knownAtFirst, learned, guessed, slipped, forgotten}) {
            if (!(0 <= chance && chance <= 1)) {
                throw new IllegalArgumentException("No chance: " + chance + ".");
            }
        }
    }

    /// What is held of a pupil after one answer.
    ///
    /// @param known chance that it was known when the answer was given
    /// @param knownNext chance that it is known at the next
    /// @param rightNext chance that the next answer is right
    /// @param logLikelihood of all answers so far, natural logarithm
    public record State(double known, double knownNext, double rightNext, double logLikelihood) {}

    /// What is held after each answer; true is right.
    public List<State> after(List<Boolean> answers) {
        List<State> states = new ArrayList<>();
        double known = knownAtFirst;
        double log = 0;
        for (boolean right : answers) {
            double ifKnown = known * (right ? 1 - slipped : slipped);
            double ifNot = (1 - known) * (right ? guessed : 1 - guessed);
            double likely = ifKnown + ifNot;
            if (likely == 0) {
                throw new IllegalArgumentException(
                        "An answer that cannot be, number %d.".formatted(states.size() + 1));
            }
            log += Math.log(likely);
            double was = ifKnown / likely;
            known = was * (1 - forgotten) + (1 - was) * learned;
            states.add(new State(was, known, right(known), log));
        }
        return states;
    }

    private double right(double known) {
        return known * (1 - slipped) + (1 - known) * guessed;
    }
}
