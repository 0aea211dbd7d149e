package tamabako.insight.slip;

/// The slips that can be made in a column on the frame: all of them, or those that make one certain
/// difference.
///
/// For one difference only those places are looked at where it can be made, and no step of the
/// working but those on one rod; what is found there is found by the same lines as all slips are.
final class ColumnSlips {

    private final FastColumn column;
    private final long[] all;
    private final int first;
    private final int lowest;
    private final Events events;

    /// @param lowest the power of ten of the rows' last place
    ColumnSlips(FastColumn column, int lowest, Events events) {
        this(column, column.rows(), 0, lowest, events);
    }

    /// The slips in a part of a column, begun on a frame that shows the part's first row.
    ///
    /// @param all the rows of the whole column
    ColumnSlips(FastColumn column, long[] all, int lowest, Events events) {
        this(column, all, 1, lowest, events);
    }

    private ColumnSlips(FastColumn column, long[] all, int first, int lowest, Events events) {
        this.column = column;
        this.all = all;
        this.first = first;
        this.lowest = lowest;
        this.events = events;
    }

    /// Adds the slips of hand, eye and rows, and those of reading a total below zero.
    void add() {
        new BeadSlips(column.log(first), lowest, Effect.ADDED, events).add();
        for (int i = first; i < column.rows().length; i++) {
            row(i).add();
        }
        complement();
    }

    /// Adds those that make the difference `sought`.
    void add(Sought sought) {
        if (sought.isOfOneDigit()) {
            new RodOfColumn(column, sought.place(), lowest, events).add(first);
        }
        for (int i = first; i < column.rows().length; i++) {
            row(i).add(sought);
        }
        complement();
    }

    private RowSlips row(int i) {
        return new RowSlips(column, i, all, lowest, events);
    }

    private void complement() {
        if (column.lent() != 0) {
            new ComplementSlips(column.lent(), column.lent() - column.shown(), events).add();
        }
    }
}
