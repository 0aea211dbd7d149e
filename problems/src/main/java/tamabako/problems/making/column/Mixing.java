package tamabako.problems.making.column;

import tamabako.problems.making.draw.Draws;

/// Moves a column, digit by digit, until it meets all conditions, and then goes on moving it among
/// those that do, so that little is left of where it came from.
///
/// This is for wishes that chance alone hardly ever meets. What is likelier here than it should be
/// is measured in docs/making.md.
final class Mixing implements Source {

    /// Moves after which a column that meets the conditions is far from the first that did, for
    /// each of its digits.
    private static final int MOVES_A_DIGIT = 8;

    /// Moves before another column is begun with.
    static final int MOST_MOVES = 6000;

    /// Tries for a column to begin with.
    private static final int MOST_STARTS = 1000;

    /// How likely a move away from the conditions is kept, of 2^16, by how far it leads.
    private static final int[] KEPT = kept(1.6);

    private final Source start;
    private final Checks checks;
    private final Facts facts;
    private final Move move;

    /// @param start where columns come from that need not meet the conditions
    Mixing(Asked asked, Source start) {
        this.start = start;
        this.checks = new Checks(asked.conditions());
        this.facts = asked.facts();
        boolean keepsBag =
                asked.digitsEach().filter(each -> each.least() == each.most()).isPresent();
        this.move = new Move(asked, facts, keepsBag);
    }

    @Override
    public boolean draw(Draws draws, Facts into) {
        if (!begin(draws) || !find(draws)) {
            return false;
        }
        int digits = 0;
        for (int row = 0; row < facts.rows(); row++) {
            digits += Digits.length(facts.size(row));
        }
        mix(digits * MOVES_A_DIGIT, draws);
        into.copy(facts);
        return true;
    }

    private boolean begin(Draws draws) {
        for (int i = 0; i < MOST_STARTS; i++) {
            if (start.draw(draws, facts)) {
                return true;
            }
        }
        return false;
    }

    private boolean find(Draws draws) {
        int far = checks.far(facts);
        for (int moves = 0; far > 0; moves++) {
            if (moves == MOST_MOVES) {
                return false;
            }
            if (move.make(draws)) {
                int then = checks.far(facts);
                if (then <= far || isKept(then - far, draws)) {
                    far = then;
                } else {
                    move.undo();
                }
            }
        }
        return true;
    }

    private static boolean isKept(int farther, Draws draws) {
        return farther < KEPT.length && draws.bits() >>> 48 < KEPT[farther];
    }

    private void mix(int moves, Draws draws) {
        for (int i = 0; i < moves; i++) {
            if (move.make(draws) && !checks.areMet(facts)) {
                move.undo();
            }
        }
    }

    private static int[] kept(double coldness) {
        int[] kept = new int[8];
        for (int farther = 0; farther < kept.length; farther++) {
            kept[farther] = (int) (65_536 * StrictMath.exp(-coldness * farther));
        }
        return kept;
    }
}
