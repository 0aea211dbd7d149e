package tamabako.insight.slip;

/// The steps of a column on one of its rods: a digit of each row, and what is carried to the rod or
/// borrowed from it, worked out from the totals alone.
final class RodOfColumn {

    private final FastColumn column;
    private final int rod;
    private final long unit;
    private final RodSlips slips;
    private final Events events;

    /// @param lowest the power of ten of the rows' last place
    RodOfColumn(FastColumn column, int rod, int lowest, Events events) {
        this.column = column;
        this.rod = rod;
        this.unit = Tens.power(rod);
        this.slips = new RodSlips(lowest, Effect.ADDED, events);
        this.events = events;
    }

    /// Adds the slips of these steps, from row `first` on.
    void add(int first) {
        for (int i = first; i < column.rows().length; i++) {
            int where = column.where(i);
            long row = column.rows()[i];
            long frame = column.frameBefore(i);
            int held = digit(frame, rod);
            int digit = digit(row, rod);
            if (digit != 0) {
                events.after(where, rod);
                slips.step(rod, where, held, digit, false);
            }
            carried((held + digit + 10) % 10, where, frame, row);
            if (column.givenBack(i) >= 0) {
                giveBack(column.givenBack(i), where, frame + row);
            }
        }
    }

    private void giveBack(int loan, int where, long frame) {
        carried(digit(frame, rod), where, frame, -Tens.power(loan));
        if (loan == rod) {
            events.after(where, rod);
            slips.loanNotReturned(rod, where);
        }
    }

    /// One is carried to the rod, or borrowed from it, when `number` comes to `frame`: on the rod
    /// right of it a digit passes ten, or one that is carried on does.
    ///
    /// @param held what the rod holds when it is carried or borrowed
    private void carried(int held, int where, long frame, long number) {
        long sum = frame % unit + number % unit;
        if (sum >= 0 && sum < unit) {
            return;
        }
        int below = rod - 1;
        while (!StepSlips.passesTen(digit(frame, below), digit(number, below))) {
            below--;
        }
        events.after(where, below);
        int one = number < 0 ? -1 : 1;
        if (below == rod - 1) {
            slips.leftOut(rod, where, digit(frame, below), digit(number, below), false);
        } else {
            slips.leftOut(rod, where, one > 0 ? 9 : 0, one, true);
        }
        slips.step(rod, where, held, one, true);
    }

    private static int digit(long number, int place) {
        return (int) (number / Tens.power(place) % 10);
    }
}
