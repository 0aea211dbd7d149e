package tamabako.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// A hand at work: it adds and takes digits on a frame by the trade's rules and notes every step.
///
/// This is the one place where the rules of the bead are; every procedure works through it. Work
/// begins with the frame given and ends with [#trace()].
public final class Hand {

    private final Frame start;
    private final Habits habits;
    private final Rod[] rods;
    private final List<Step> steps = new ArrayList<>();

    public Hand(Frame start, Habits habits) {
        this.start = start;
        this.habits = habits;
        this.rods = start.rods().toArray(Rod[]::new);
    }

    /// The count of a rod now. Rods beyond the frame count 0.
    public int digit(int rod) {
        return start.has(rod) ? rods[rod - start.lowest()].value() : 0;
    }

    /// Adds `digit` (0 to 9) on `rod`, with all carries. Zero moves nothing.
    ///
    /// @throws Unworkable if a carry runs off the frame
    public void add(int rod, int digit, Cause cause) {
        if (digit == 0) {
            return;
        }
        check(rod, digit);
        tidy(rod);
        Technique technique = Technique.ofAdding(digit(rod), digit);
        boolean carryFirst = habits.carryOrder() == CarryOrder.CARRY_THEN_REMOVE;
        if (technique.passesTen() && carryFirst) {
            add(rod + 1, 1, new Cause.Carry(cause.entry()));
        }
        note(rod, digit, technique, cause);
        if (technique.passesTen() && !carryFirst) {
            add(rod + 1, 1, new Cause.Carry(cause.entry()));
        }
    }

    /// Takes `digit` (0 to 9) from `rod`, borrowing first where it must. Zero moves nothing.
    ///
    /// @throws Unworkable if nothing can be borrowed from on the frame
    public void take(int rod, int digit, Cause cause) {
        if (digit == 0) {
            return;
        }
        check(rod, digit);
        tidy(rod);
        Technique technique = Technique.ofTaking(digit(rod), digit);
        if (technique.passesTen()) {
            take(rod + 1, 1, new Cause.Borrow(cause.entry()));
        }
        note(rod, -digit, technique, cause);
    }

    /// Adds a two-digit product on `rod` (its tens) and the rod right of it (its units).
    public void addProduct(int tensRod, int product, Cause cause) {
        add(tensRod, product / 10, cause);
        add(tensRod - 1, product % 10, cause);
    }

    /// Takes a two-digit product from `rod` (its tens) and the rod right of it (its units).
    public void takeProduct(int tensRod, int product, Cause cause) {
        take(tensRod, product / 10, cause);
        take(tensRod - 1, product % 10, cause);
    }

    /// The frame now.
    public Frame frame() {
        return new Frame(start.kind(), start.lowest(), Arrays.asList(rods));
    }

    /// What has been done so far.
    public Trace trace() {
        return new Trace(start, steps, frame());
    }

    /// The steps done so far, for a trace on a shorter frame.
    public List<Step> steps() {
        return List.copyOf(steps);
    }

    /// Brings a rod with more than plain beads into plain form: on frames with five lower beads or
    /// two upper beads only.
    private void tidy(int rod) {
        Rod held = rods[rod - start.lowest()];
        if (held.isPlain()) {
            return;
        }
        int count = held.value();
        if (count >= 10) {
            add(rod + 1, 1, new Cause.Tidied(rod));
        }
        Rod plain = Rod.showing(count % 10);
        List<Motion> motions = new ArrayList<>();
        push(motions, rod, plain.lower() - held.lower());
        for (int i = held.upper(); i != plain.upper(); i += Integer.signum(plain.upper() - i)) {
            motions.add(Motion.of(upper(rod, plain.upper() - held.upper())));
        }
        int change = count >= 10 ? -1 : 1;
        rods[rod - start.lowest()] = plain;
        steps.add(
                new Step(
                        rod,
                        change,
                        Technique.FIVE_COMPLEMENT,
                        new Cause.Tidied(rod),
                        held,
                        plain,
                        motions));
    }

    private void note(int rod, int digit, Technique technique, Cause cause) {
        Rod before = rods[rod - start.lowest()];
        int change = technique.passesTen() ? digit - 10 * Integer.signum(digit) : digit;
        Rod after = Rod.showing(before.value() + change);
        rods[rod - start.lowest()] = after;
        steps.add(
                new Step(rod, digit, technique, cause, before, after, motions(rod, before, after)));
    }

    /// How the fingers get from one plain form to another on one rod.
    private static List<Motion> motions(int rod, Rod before, Rod after) {
        int upper = after.upper() - before.upper();
        int lower = after.lower() - before.lower();
        List<Motion> motions = new ArrayList<>();
        if (upper == 0 || lower == 0) {
            if (upper != 0) {
                motions.add(Motion.of(upper(rod, upper)));
            }
            push(motions, rod, lower);
        } else if (upper > 0 && lower > 0) {
            // Six to nine are pinched: thumb up and forefinger down together.
            motions.add(Motion.of(lower(rod, lower), upper(rod, upper)));
        } else if (upper > 0) {
            // One sweep of the forefinger: the five down, then the ones down.
            motions.add(Motion.of(upper(rod, upper), lower(rod, lower)));
        } else if (lower > 0) {
            // Thumb and forefinger rise together.
            motions.add(Motion.of(lower(rod, lower), upper(rod, upper)));
        } else {
            // Taking six to nine off: the ones down first, then the five up.
            motions.add(Motion.of(lower(rod, lower)));
            motions.add(Motion.of(upper(rod, upper)));
        }
        return motions;
    }

    private static void push(List<Motion> motions, int rod, int beads) {
        if (beads != 0) {
            motions.add(Motion.of(lower(rod, beads)));
        }
    }

    private static Stroke upper(int rod, int change) {
        return new Stroke.Upper(rod, direction(change));
    }

    private static Stroke lower(int rod, int change) {
        return new Stroke.Lower(rod, Math.abs(change), direction(change));
    }

    private static Direction direction(int change) {
        return change > 0 ? Direction.TOWARD_BEAM : Direction.AWAY_FROM_BEAM;
    }

    private void check(int rod, int digit) {
        if (digit < 0 || digit > 9) {
            throw new IllegalArgumentException("A digit is 0 to 9, not " + digit + ".");
        }
        if (!start.has(rod)) {
            throw new Unworkable(
                    new Unworkable.Reason.TooLong(
                            "This sum",
                            rod > start.highest()
                                    ? rod - start.lowest() + 1
                                    : start.highest() - rod + 1,
                            start.rods().size()));
        }
    }
}
