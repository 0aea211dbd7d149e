package tamabako.frame.column;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tamabako.frame.Cause;
import tamabako.frame.Figures;
import tamabako.frame.Frame;
import tamabako.frame.Hand;
import tamabako.frame.Outcome;
import tamabako.frame.Rod;
import tamabako.frame.Setup;
import tamabako.frame.Step;
import tamabako.frame.Trace;
import tamabako.frame.Unworkable;
import tamabako.frame.Working;

/// Works a column on a frame.
///
/// Rows go on from the left, the highest digit first. Source: K. Tochio, Computation on the Soroban
/// (1912), Rule 1. Totals below zero: Heffelfinger and Flom, Abacus: Mystery of the Bead.
public final class ColumnWork {

    /// A frame is drawn with at least this many rods: from one unit point to the next.
    private static final int FEWEST_RODS = 3;

    private final List<BigDecimal> rows;
    private final Hand hand;
    private BigDecimal shown = BigDecimal.ZERO;
    private OptionalInt loan = OptionalInt.empty();

    private ColumnWork(List<BigDecimal> rows, Hand hand) {
        this.rows = rows;
        this.hand = hand;
    }

    /// Works `rows`, minus rows with a minus sign. The first row is set, the others are worked; a
    /// first row that is zero or below is worked from a clear frame.
    ///
    /// @throws Unworkable if there is no row, or more rods are needed than the frame has
    public static Working work(List<BigDecimal> rows, Setup setup) {
        if (rows.isEmpty()) {
            throw new Unworkable(new Unworkable.Reason.NoRows());
        }
        int lowest = -rows.stream().mapToInt(BigDecimal::scale).max().orElse(0);
        lowest = Math.min(lowest, 0);
        int most = rods(setup, lowest);
        if (setup.unit().isPresent()) {
            int unit = setup.unit().getAsInt();
            int asked = unit - most;
            if (asked > lowest) {
                throw new Unworkable(new Unworkable.Reason.NoSuchUnitRod(unit, most));
            }
            lowest = asked;
        }
        for (BigDecimal row : rows) {
            int needed = Math.max(1, Figures.wholeDigits(row)) - lowest;
            if (needed > most) {
                throw new Unworkable(
                        new Unworkable.Reason.TooLong(row.toPlainString(), needed, most));
            }
        }
        Frame clear = Frame.clear(setup.kind(), lowest, lowest + most - 1);
        Hand setter = new Hand(clear, setup.habits());
        boolean set = rows.getFirst().signum() > 0;
        if (set) {
            enter(setter, rows.getFirst(), lowest);
        }
        ColumnWork work = new ColumnWork(rows, new Hand(setter.frame(), setup.habits()));
        work.run(set, lowest);
        return work.finish(setter, setup.rods().isPresent() || setup.unit().isPresent());
    }

    /// The rods asked for; if only the unit rod is, those from the left to it and the decimals.
    private static int rods(Setup setup, int lowest) {
        int toUnit = setup.unit().orElse(Frame.MOST_RODS);
        return setup.rods().orElse(Math.min(Frame.MOST_RODS, toUnit - lowest));
    }

    private static void enter(Hand setter, BigDecimal row, int lowest) {
        for (int place = Figures.wholeDigits(row) - 1; place >= lowest; place--) {
            setter.add(
                    place,
                    Figures.digitAt(row, place),
                    new Cause.Setting(Cause.Operand.FIRST_ROW, place));
        }
    }

    private void run(boolean firstIsSet, int lowest) {
        if (firstIsSet) {
            shown = rows.getFirst();
        }
        for (int i = firstIsSet ? 1 : 0; i < rows.size(); i++) {
            BigDecimal row = rows.get(i);
            int number = i + 1;
            if (shown.add(row).signum() < 0) {
                borrowFor(row, number);
            }
            for (int place = Figures.wholeDigits(row) - 1; place >= lowest; place--) {
                Cause cause = new Cause.Row(number, place);
                if (row.signum() < 0) {
                    hand.take(place, Figures.digitAt(row, place), cause);
                } else {
                    hand.add(place, Figures.digitAt(row, place), cause);
                }
            }
            shown = shown.add(row);
            giveBack(number);
        }
    }

    /// Borrows from the imagined rod just above the longer of frame and row; a loan that runs
    /// already is replaced by a larger one.
    private void borrowFor(BigDecimal row, int number) {
        int rod = Math.max(0, Math.max(Figures.wholeDigits(row), Figures.wholeDigits(shown)));
        BigDecimal old = BigDecimal.ZERO;
        if (loan.isPresent()) {
            rod = Math.max(rod, loan.getAsInt() + 1);
            old = BigDecimal.ONE.scaleByPowerOfTen(loan.getAsInt());
        }
        BigDecimal more = BigDecimal.ONE.scaleByPowerOfTen(rod).subtract(old);
        if (shown.add(more).add(row).signum() < 0) {
            rod++;
            more = BigDecimal.ONE.scaleByPowerOfTen(rod).subtract(old);
        }
        for (int place = rod; place >= loan.orElse(rod); place--) {
            hand.add(place, Figures.digitAt(more, place), new Cause.Loan(number));
        }
        shown = shown.add(more);
        loan = OptionalInt.of(rod);
    }

    private void giveBack(int number) {
        if (loan.isEmpty()) {
            return;
        }
        BigDecimal lent = BigDecimal.ONE.scaleByPowerOfTen(loan.getAsInt());
        if (shown.compareTo(lent) >= 0) {
            hand.take(loan.getAsInt(), 1, new Cause.LoanReturned(number));
            shown = shown.subtract(lent);
            loan = OptionalInt.empty();
        }
    }

    private Working finish(Hand setter, boolean asAsked) {
        Trace setting = setter.trace();
        Trace trace = hand.trace();
        if (!asAsked) {
            int highest = Math.max(0, trace.start().lowest() + FEWEST_RODS - 1);
            for (Step step : all(setting.steps(), trace.steps())) {
                highest = Math.max(highest, step.rod());
            }
            setting = shorten(setting, highest);
            trace = shorten(trace, highest);
        }
        BigDecimal read = trace.end().value();
        if (loan.isPresent()) {
            read = read.subtract(BigDecimal.ONE.scaleByPowerOfTen(loan.getAsInt()));
        }
        return new Working(setting, trace, new Outcome(read, Optional.empty(), loan));
    }

    private static Trace shorten(Trace trace, int highest) {
        return new Trace(
                shorten(trace.start(), highest), trace.steps(), shorten(trace.end(), highest));
    }

    private static Frame shorten(Frame frame, int highest) {
        List<Rod> rods = frame.rods().subList(0, highest - frame.lowest() + 1);
        return new Frame(frame.kind(), frame.lowest(), rods);
    }

    private static List<Step> all(List<Step> first, List<Step> second) {
        List<Step> all = new ArrayList<>(first);
        all.addAll(second);
        return Collections.unmodifiableList(all);
    }
}
