package tamabako.insight.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/// A wrong rule that a pupil may follow wherever it applies.
///
/// @param part what is done wrong
/// @param adding whether it is done where something is added to the rod, or where it is taken
/// @param digit the digit that is added or taken; 0 for a rule about carries or borrows
/// @param used what is moved instead of the complement; below zero for the complement moved the
///   wrong way, 0 for nothing
public record LastingRule(Part part, boolean adding, int digit, int used) {

    /// What a rule is about.
    public enum Part {
        /// The complement to ten.
        TEN_COMPLEMENT,
        /// The complement to five.
        FIVE_COMPLEMENT,
        /// The upper bead of a move through five, which stays.
        FIVE_BEAD,
        /// Every carry, or every borrow.
        CARRY,
        /// A carry on a full rod, or a borrow from an empty one, which runs on.
        RUNNING_CARRY
    }

    private static final List<LastingRule> ALL = List.copyOf(all());

    /// All rules that are looked for, in the order that settles ties.
    public static List<LastingRule> known() {
        return ALL;
    }

    private static List<LastingRule> all() {
        List<LastingRule> rules = new ArrayList<>();
        for (boolean adding : new boolean[] {true, false}) {
            for (int digit = 1; digit <= 9; digit++) {
                tens(adding, digit, rules);
            }
            for (int digit = 1; digit <= 4; digit++) {
                fives(adding, digit, rules);
            }
            rules.add(new LastingRule(Part.CARRY, adding, 0, 0));
            rules.add(new LastingRule(Part.RUNNING_CARRY, adding, 0, 0));
        }
        return rules;
    }

    private static void tens(boolean adding, int digit, List<LastingRule> rules) {
        int complement = 10 - digit;
        int[] others = {complement - 1, complement + 1, digit, 5 - digit, 0};
        for (int i = 0; i < others.length; i++) {
            boolean nothing = i == others.length - 1;
            if (nothing || (others[i] >= 1 && others[i] <= 9 && others[i] != complement)) {
                add(new LastingRule(Part.TEN_COMPLEMENT, adding, digit, others[i]), rules);
            }
        }
        // The wrong way round, the rod holds twice the complement at most.
        if (2 * complement <= 9) {
            rules.add(new LastingRule(Part.TEN_COMPLEMENT, adding, digit, -complement));
        }
    }

    private static void fives(boolean adding, int digit, List<LastingRule> rules) {
        int complement = 5 - digit;
        for (int other : new int[] {complement - 1, complement + 1, digit, 0}) {
            if (other >= 0 && other <= 4) {
                add(new LastingRule(Part.FIVE_COMPLEMENT, adding, digit, other), rules);
            }
        }
        rules.add(new LastingRule(Part.FIVE_BEAD, adding, digit, complement));
    }

    private static void add(LastingRule rule, List<LastingRule> rules) {
        if (!rules.contains(rule)) {
            rules.add(rule);
        }
    }

    /// The complement that should be moved; 0 for a rule about carries.
    public int complement() {
        return switch (part) {
            case TEN_COMPLEMENT -> 10 - digit;
            case FIVE_COMPLEMENT, FIVE_BEAD -> 5 - digit;
            case CARRY, RUNNING_CARRY -> 0;
        };
    }

    /// The word used in files and commands, such as `add-ten-complement-6-by-6`: going over ten to
    /// add 6, 6 is moved instead of 4. `add-carry` and `take-carry` are carries and borrows.
    public String word() {
        String move = adding ? "add-" : "take-";
        String what = part.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return switch (part) {
            case CARRY, RUNNING_CARRY -> move + what;
            case FIVE_BEAD -> move + what + "-" + digit;
            case TEN_COMPLEMENT, FIVE_COMPLEMENT ->
                    move + what + "-" + digit + (used < 0 ? "-reversed" : "-by-" + used);
        };
    }
}
