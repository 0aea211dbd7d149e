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

    /// A hand that begins to work on `start`.
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
    /// @throws Unworkable if a carry runs off the frame; then no bead has moved
    public void add(int rod, int digit, Cause cause) {
        checkDigit(digit);
        if (digit == 0) {
            return;
        }
        checkRod(rod);
        Technique technique = Technique.ofAdding(held(rod), digit);
        if (!technique.passesTen()) {
            note(rod, digit, technique, cause);
            return;
        }
        checkCarry(rod + 1);
        Cause carry = new Cause.Carry(cause.entry());
        switch (habits.carryOrder()) {
            case CARRY_THEN_REMOVE -> {
                add(rod + 1, 1, carry);
                note(rod, digit, technique, cause);
            }
            case REMOVE_THEN_CARRY -> {
                note(rod, digit, technique, cause);
                add(rod + 1, 1, carry);
            }
        }
    }

    /// Takes `digit` (0 to 9) from `rod`, borrowing first where it must. Zero moves nothing.
    ///
    /// @throws Unworkable if nothing can be borrowed from on the frame; then no bead has moved
    public void take(int rod, int digit, Cause cause) {
        checkDigit(digit);
        if (digit == 0) {
            return;
        }
        checkRod(rod);
        Technique technique = Technique.ofTaking(held(rod), digit);
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

    /// Takes a number whose units stand on `unitRod`, its highest digit first.
    public void takeNumber(int unitRod, int number, Cause cause) {
        if (number >= 10) {
            takeNumber(unitRod + 1, number / 10, cause);
        }
        take(unitRod, number % 10, cause);
    }

    /// What the rods from `from` up to `to` read now, `from` being the units. From 1000 on, the
    /// number is read no further than it takes to see that it is so large.
    public int standing(int from, int to) {
        int number = 0;
        for (int rod = to; rod >= from && number < 1000; rod--) {
            number = 10 * number + digit(rod);
        }
        return number;
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

    private void note(int rod, int digit, Technique technique, Cause cause) {
        Rod before = held(rod);
        boolean rises = digit > 0 != technique.passesTen();
        int moved = technique.passesTen() ? 10 - Math.abs(digit) : Math.abs(digit);
        Rod after = rises ? before.adding(moved) : before.taking(moved);
        rods[rod - start.lowest()] = after;
        steps.add(
                new Step(
                        rod,
                        digit,
                        technique,
                        cause,
                        before,
                        after,
                        Motion.between(rod, before, after)));
    }

    private Rod held(int rod) {
        return rods[rod - start.lowest()];
    }

    private static void checkDigit(int digit) {
        if (digit < 0 || digit > 9) {
            throw new IllegalArgumentException("A digit is 0 to 9, not " + digit + ".");
        }
    }

    /// A carry passes over full rods; the rod where it comes to rest must be on the frame.
    private void checkCarry(int to) {
        int rest = to;
        while (start.has(rest) && digit(rest) >= 9) {
            rest++;
        }
        checkRod(rest);
    }

    private void checkRod(int rod) {
        if (!start.has(rod)) {
            int needed = Math.max(rod, start.highest()) - Math.min(rod, start.lowest()) + 1;
            throw new Unworkable(new Unworkable.Reason.FrameTooShort(needed, start.rods().size()));
        }
    }
}
