package tamabako.frame.words;

import java.util.ArrayList;
import java.util.List;
import tamabako.frame.Cause;
import tamabako.frame.Step;

/// One digit put on or taken off: one move of the hand.
///
/// @param ahead the borrows that it needs, or its carries if the hand carries first
/// @param main the step on the rod itself
/// @param after its carries if the hand carries last
record Entry(List<Step> ahead, Step main, List<Step> after) {

    Entry {
        ahead = List.copyOf(ahead);
        after = List.copyOf(after);
    }

    /// The entries that a run of steps is made of.
    static List<Entry> of(List<Step> steps) {
        List<Entry> entries = new ArrayList<>();
        int next = 0;
        while (next < steps.size()) {
            int main = next;
            while (serves(steps.get(main)) && main + 1 < steps.size()) {
                main++;
            }
            int end = main + 1;
            while (main == next && end < steps.size() && carriesOn(steps, end)) {
                end++;
            }
            entries.add(
                    new Entry(
                            steps.subList(next, main),
                            steps.get(main),
                            steps.subList(main + 1, end)));
            next = end;
        }
        return entries;
    }

    private static boolean serves(Step step) {
        return step.cause() instanceof Cause.Carry || step.cause() instanceof Cause.Borrow;
    }

    /// Whether the step at `index` carries on from the one before it.
    private static boolean carriesOn(List<Step> steps, int index) {
        Step before = steps.get(index - 1);
        Step step = steps.get(index);
        return step.cause() instanceof Cause.Carry
                && step.rod() == before.rod() + 1
                && before.digit() > 0
                && before.technique().passesTen();
    }
}
