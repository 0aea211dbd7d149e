package tamabako.insight.slip;

/// The slips of the hand that the beads of one rod allow at one step, whatever the rod is: worked
/// out once for each [Cell], and once more where a carry or borrow runs on.
final class StepSlips {

    /// A bead that the step does not move is brushed along so many times more seldom than one that
    /// it moves slips.
    private static final double BRUSHED = 0.1;

    private static final int MOST = 16;
    private static final StepSlips[][][] CHECKED = all(true);
    private static final StepSlips[][][] UNCHECKED = all(false);

    private final int held;
    private final int digit;
    private final int after;
    private final Move move;
    private final boolean checked;
    private final Events slips = new Events(MOST);
    private final Options options;

    private StepSlips(int held, int digit, Move move, boolean checked) {
        this.held = held;
        this.digit = digit;
        this.after = (held + digit + 10) % 10;
        this.move = move;
        this.checked = checked;
        if (passesTen(held, digit)) {
            tenComplement(10 - Math.abs(digit), Integer.signum(digit));
        }
        // Over ten, what moves on this rod is the complement, the other way.
        int change = after - held;
        boolean throughFive = Math.abs(change) < 5 && change != 0 && upper() != 0;
        if (throughFive) {
            fiveComplement(Math.abs(change), Integer.signum(change));
        }
        lowerBead();
        upperBead();
        this.options = new Options(slips);
    }

    /// Whether adding `digit`, or taking it where it is below zero, passes ten.
    static boolean passesTen(int held, int digit) {
        return held + digit < 0 || held + digit > 9;
    }

    /// Those of a step by a [Cell].
    ///
    /// @param carried whether the step is a carry or borrow itself
    /// @param checked whether a wrong way that the beads do not allow is no slip
    static StepSlips of(int held, int digit, boolean carried, boolean checked) {
        boolean runsOn = carried && passesTen(held, digit);
        return (checked ? CHECKED : UNCHECKED)[runsOn ? 1 : 0][held][digit + 9];
    }

    /// Those of step `i` of `log`, where beads are checked.
    static StepSlips of(StepLog log, int i) {
        return of(log.before(i), log.digit(i), log.isCarried(i), true);
    }

    private static StepSlips[][][] all(boolean checked) {
        StepSlips[][][] all = new StepSlips[2][10][19];
        for (int held = 0; held <= 9; held++) {
            for (int digit = -9; digit <= 9; digit++) {
                if (digit != 0) {
                    all[0][held][digit + 9] =
                            new StepSlips(held, digit, Move.of(held, digit), checked);
                    all[1][held][digit + 9] =
                            new StepSlips(held, digit, Move.CARRY_RUNS_ON, checked);
                }
            }
        }
        return all;
    }

    /// The move of the step.
    Move move() {
        return move;
    }

    /// The slips.
    Options options() {
        return options;
    }

    /// The complement is taken off where the step adds, put on where it takes. A wrong way that the
    /// beads do not allow is noticed, and no slip.
    private void tenComplement(int complement, int adds) {
        int meant = 10 - complement;
        usedForTen(Way.TEN_COMPLEMENT_OFF, complement, complement - 1);
        usedForTen(Way.TEN_COMPLEMENT_OFF, complement, complement + 1);
        usedForTen(Way.TEN_COMPLEMENT_DIGIT, complement, meant);
        usedForTen(Way.TEN_COMPLEMENT_TO_FIVE, complement, 5 - meant);
        option(Way.TEN_COMPLEMENT_LEFT_OUT, adds * complement, complement);
        if (isThere(held + adds * complement, 9)) {
            option(Way.TEN_COMPLEMENT_REVERSED, adds * 2 * complement, complement);
        }
    }

    private void usedForTen(Way way, int complement, int used) {
        int adds = Integer.signum(digit);
        int left = held - adds * used;
        if (used >= 1 && used <= 9 && used != complement && isThere(left, 9)) {
            option(way, adds * (complement - used), complement, used);
        }
    }

    /// The five goes one way, the complement to five the other.
    private void fiveComplement(int meant, int up) {
        int complement = 5 - meant;
        usedForFive(Way.FIVE_COMPLEMENT_OFF, up, complement, complement - 1);
        usedForFive(Way.FIVE_COMPLEMENT_OFF, up, complement, complement + 1);
        usedForFive(Way.FIVE_COMPLEMENT_DIGIT, up, complement, meant);
        option(Way.FIVE_COMPLEMENT_LEFT_OUT, up * complement, complement);
        option(Way.FIVE_LEFT_OUT, -5 * up);
    }

    private void usedForFive(Way way, int up, int complement, int used) {
        int lower = held % 5 - up * used;
        if (used >= 1 && used <= 4 && used != complement && isThere(lower, 4)) {
            option(way, up * (complement - used), complement, used);
        }
    }

    private void lowerBead() {
        int lower = after % 5;
        int mark = slips.mark();
        if (isThere(lower + 1, 4)) {
            option(Way.ONE_BEAD_MORE, 1);
        }
        if (isThere(lower - 1, 4)) {
            option(Way.ONE_BEAD_LESS, -1);
        }
        slips.share(mark, lower == held % 5 ? BRUSHED : 1);
    }

    private void upperBead() {
        int mark = slips.mark();
        if (isThere(after - 5, 9)) {
            option(Way.FIVE_BEAD_LESS, -5);
        }
        if (isThere(after + 5, 9)) {
            option(Way.FIVE_BEAD_MORE, 5);
        }
        slips.share(mark, upper() == 0 ? BRUSHED : 1);
    }

    /// Whether the beads for `count`, at most `most`, are on the rod.
    private boolean isThere(int count, int most) {
        return (count >= 0 && count <= most) || !checked;
    }

    /// Whether the upper bead comes (1), stays (0) or leaves (-1).
    private int upper() {
        return after / 5 - held / 5;
    }

    private void option(Way way, int change) {
        add(change, Code.of(way, 0));
    }

    private void option(Way way, int change, int first) {
        add(change, Code.with(Code.of(way, 0), first));
    }

    private void option(Way way, int change, int first, int used) {
        add(change, Code.with(Code.of(way, 0), first, used));
    }

    private void add(int change, long code) {
        slips.add(change, Code.on(Code.in(code, move), held, digit));
    }
}
