package tamabako.insight.slip;

/// The slips of the hand at single steps, each with its rod and what it does to the answer.
final class RodSlips {

    private final int lowest;
    private final Effect effect;
    private final Events events;
    private final boolean checked;

    /// @param lowest the power of ten of rod 0
    /// @param effect what a change on the rods does to the answer
    RodSlips(int lowest, Effect effect, Events events) {
        this.lowest = lowest;
        this.effect = effect;
        this.events = events;
        this.checked = !events.omit(Omission.BEAD_CHECK);
    }

    /// The slips that the beads allow at the step that adds `digit` on `rod`, which holds `held`.
    ///
    /// @param where the packed part of the sum, as in [Code]
    /// @param carried whether the step is a carry or borrow itself
    void step(int rod, int where, int held, int digit, boolean carried) {
        StepSlips slips = StepSlips.of(held, digit, carried, checked);
        events.step(slips.move(), held, digit);
        long at = Code.place(where, rod + lowest);
        slips.options().add(Tens.power(rod), at, effect, events);
    }

    /// The carry to `rod`, or the borrow from it, that the step that adds `digit` on the rod right
    /// of it needs is left out.
    ///
    /// @param held what that other rod holds
    /// @param carried whether that step is a carry or borrow itself
    void leftOut(int rod, int where, int held, int digit, boolean carried) {
        Way way = digit > 0 ? Way.CARRY_LEFT_OUT : Way.BORROW_LEFT_OUT;
        Move move = StepSlips.of(held, digit, carried, checked).move();
        long code = Code.in(Code.of(way, where, rod + lowest), move);
        long unit = Tens.power(rod);
        events.add(effect.tenths(digit > 0 ? -unit : unit), Code.on(code, held, digit));
    }

    /// The loan is not given back on `rod`.
    void loanNotReturned(int rod, int where) {
        long code = Code.of(Way.LOAN_NOT_RETURNED, where, rod + lowest);
        events.add(effect.tenths(Tens.power(rod)), code);
    }
}
