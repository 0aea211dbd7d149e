package tamabako.frame.words;

import java.util.ArrayList;
import java.util.List;
import tamabako.frame.CarryOrder;
import tamabako.frame.Step;
import tamabako.frame.Stroke;

/// The bead formula of a step, as teachers chant it: `+8 = −2 +10`.
final class Formula {

    private Formula() {}

    /// What is done, and after the equals sign the beads that do it, unless those are the same.
    static String of(Step step, CarryOrder order) {
        List<Integer> parts = new ArrayList<>(beads(step));
        if (step.technique().passesTen()) {
            boolean tenFirst = step.digit() < 0 || order == CarryOrder.CARRY_THEN_REMOVE;
            parts.add(tenFirst ? 0 : parts.size(), 10 * Integer.signum(step.digit()));
        }
        String intended = signed(step.digit());
        return parts.size() == 1 ? intended : intended + " = " + joined(parts);
    }

    /// Beads that move the same way are one number; a five that is given back stands apart.
    private static List<Integer> beads(Step step) {
        List<Integer> changes = step.strokes().stream().map(Stroke::change).toList();
        boolean up = changes.stream().allMatch(change -> change > 0);
        boolean down = changes.stream().allMatch(change -> change < 0);
        return up || down ? List.of(step.change()) : changes;
    }

    private static String joined(List<Integer> parts) {
        return String.join(" ", parts.stream().map(Formula::signed).toList());
    }

    private static String signed(int number) {
        return (number < 0 ? "−" : "+") + Math.abs(number);
    }
}
