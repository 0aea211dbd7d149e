package tamabako.insight.rule;

/// A column worked by a pupil who follows one wrong rule at some of the occasions for it: every way
/// in which that can go.
///
/// Ways on which a rod has nothing to borrow from end without an answer.
final class RuleWalk {

    private static final int RODS = 18;
    private static final long[] POWERS = new long[RODS + 1];

    static {
        POWERS[0] = 1;
        for (int rod = 1; rod <= RODS; rod++) {
            POWERS[rod] = 10 * POWERS[rod - 1];
        }
    }

    private final LastingRule rule;
    private Ways ways = new Ways();
    private Ways next = new Ways();

    private RuleWalk(LastingRule rule) {
        this.rule = rule;
        ways.add(0, 0, 0, 1);
    }

    /// The ways to work `rows`, in units of their last place. The total of no first rows is below
    /// zero.
    static Ways of(LastingRule rule, long[] rows) {
        RuleWalk walk = new RuleWalk(rule);
        for (long row : rows) {
            walk.row(row);
        }
        return walk.ways;
    }

    private void row(long row) {
        long size = Math.abs(row);
        int rod = 0;
        while (rod < RODS && size >= POWERS[rod + 1]) {
            rod++;
        }
        for (; rod >= 0; rod--) {
            int digit = digit(size, rod);
            if (digit != 0) {
                for (int i = 0; i < ways.size(); i++) {
                    State state =
                            new State(
                                    ways.total(i),
                                    ways.followed(i),
                                    ways.refused(i),
                                    ways.times(i));
                    enter(state, new Entry(rod, digit, row > 0, false));
                }
                Ways done = ways;
                ways = next;
                next = done;
                next.clear();
                ways.trim();
            }
        }
    }

    private static int digit(long number, int rod) {
        return (int) (number / POWERS[rod] % 10);
    }

    /// Where one way stands.
    private record State(long total, int followed, int refused, double times) {

        State moved(long change) {
            return new State(total + change, followed, refused, times);
        }

        State following() {
            return new State(total, followed + 1, refused, times);
        }

        State refusing() {
            return new State(total, followed, refused + 1, times);
        }
    }

    /// A digit for one rod; `carried` if it is the one of a carry or borrow.
    private record Entry(int rod, int digit, boolean adding, boolean carried) {

        int sign() {
            return adding ? 1 : -1;
        }
    }

    private void enter(State state, Entry entry) {
        boolean room =
                entry.adding()
                        ? entry.rod() + 1 < RODS
                        : state.total() / POWERS[entry.rod()] >= entry.digit();
        if (!room) {
            return;
        }
        int sum = digit(state.total(), entry.rod()) + entry.sign() * entry.digit();
        if (sum >= 0 && sum <= 9) {
            beads(state, entry, entry.sign() * entry.digit(), false);
        } else {
            overTen(state, entry);
        }
    }

    private void overTen(State state, Entry entry) {
        int complement = -entry.sign() * (10 - entry.digit());
        boolean applies =
                rule.part() == LastingRule.Part.TEN_COMPLEMENT
                        && rule.adding() == entry.adding()
                        && rule.digit() == entry.digit();
        int used = -entry.sign() * rule.used();
        int after = digit(state.total(), entry.rod()) + used;
        if (applies && after >= 0 && after <= 9) {
            beads(state.following(), entry, used, true);
            beads(state.refusing(), entry, complement, true);
        } else {
            beads(state, entry, complement, true);
        }
    }

    /// Moves the beads of one rod by `change`, then carries or borrows if `overTen`.
    private void beads(State state, Entry entry, int change, boolean overTen) {
        int held = digit(state.total(), entry.rod());
        int sign = Integer.signum(change);
        boolean throughFive =
                change != 0 && Math.abs(change) < 5 && held / 5 != (held + change) / 5;
        boolean applies =
                throughFive && rule.adding() == (change > 0) && rule.digit() == Math.abs(change);
        int instead = applies ? throughFive(held, sign) : change;
        long unit = POWERS[entry.rod()];
        if (instead == change) {
            carry(state.moved(change * unit), entry, overTen);
        } else {
            carry(state.following().moved(instead * unit), entry, overTen);
            carry(state.refusing().moved(change * unit), entry, overTen);
        }
    }

    /// What the rule moves instead; the right change where the beads do not allow it.
    private int throughFive(int held, int sign) {
        int right = sign * rule.digit();
        return switch (rule.part()) {
            case FIVE_BEAD -> -sign * (5 - rule.digit());
            case FIVE_COMPLEMENT -> {
                int lower = held % 5 - sign * rule.used();
                yield lower >= 0 && lower <= 4 ? sign * (5 - rule.used()) : right;
            }
            case TEN_COMPLEMENT, CARRY, RUNNING_CARRY -> right;
        };
    }

    private void carry(State state, Entry entry, boolean overTen) {
        if (!overTen) {
            next.add(state.total(), state.followed(), state.refused(), state.times());
            return;
        }
        boolean applies =
                rule.adding() == entry.adding()
                        && (rule.part() == LastingRule.Part.CARRY
                                || (rule.part() == LastingRule.Part.RUNNING_CARRY
                                        && entry.carried()));
        State going = state;
        if (applies) {
            State left = state.following();
            next.add(left.total(), left.followed(), left.refused(), left.times());
            going = state.refusing();
        }
        enter(going, new Entry(entry.rod() + 1, 1, entry.adding(), true));
    }
}
