package tamabako.problems.making.column;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tamabako.problems.making.column.DigitCondition.DigitsEach;
import tamabako.problems.making.column.DigitCondition.LeadsDiffer;
import tamabako.problems.making.column.Fills.Fill;
import tamabako.problems.making.draw.Draws;

/// Draws columns of few rows whose digits come as often as asked: first signs, lengths and leads,
/// then what stands behind the leads.
///
/// Leads come as if any digits could follow. They are kept as often as there are ways to fill the
/// places behind them, compared with the leads that have most; so every column is equally likely,
/// given its lengths. What the leads alone tell, that the total falls below zero or that the answer
/// gets too long, is found before anything is filled.
final class LeadColumns implements Source {

    /// More kinds of leads and numbers of digits than these take too long to count.
    private static final int MOST_KINDS = 3000;

    private final SignPatterns signs;
    private final LengthPatterns patterns;
    private final LeadBounds bounds;
    private final boolean differ;

    /// How many digits there are in all.
    private final Choice totals;

    private final int fewest;

    /// By digits in all, the fewest first.
    private final List<FillTable> fills = new ArrayList<>();

    private final int[] lengths;
    private final int[] leads;

    /// How many digits each lead can be.
    private final int[] sides;

    /// How often each digit is a lead, and how often it stands elsewhere.
    private final int[] times = new int[10];

    private final int[] others = new int[10];
    private final Bag bag;

    /// How often a digit may be a lead.
    private final int mostTimes;


    private LeadColumns(Asked asked, DigitsEach each, List<Long> kinds) {
        Shape shape = asked.shape();
        int rows = shape.rows();
        this.signs = asked.patterns();
        this.patterns = asked.lengths();
        this.bounds = LeadBounds.of(asked);
        this.differ = asked.conditions().contains(new LeadsDiffer());
        this.fewest = shape.lengths().leastInAll(rows);
        this.totals = totals(new Fills(each), kinds, rows, shape.lengths().mostInAll(rows));
        this.lengths = new int[rows];
        this.leads = new int[rows];
        this.sides = new int[rows];
        Arrays.fill(sides, differ ? 8 : 9);
        sides[0] = 9;
        this.mostTimes = each.most();
        this.bag = new Bag(shape.lengths().mostInAll(rows));
    }

    /// Each column with one digit more stands for a tenth, so that every choice of lengths is
    /// equally likely.
    private Choice totals(Fills counted, List<Long> kinds, int rows, int highest) {
        List<BigInteger> weights = new ArrayList<>();
        for (int digits = fewest; digits <= highest; digits++) {
            Fill[] all = counted.all(kinds, digits - rows);
            fills.add(new FillTable(all));
            weights.add(
                    patterns.count(digits)
                            .multiply(BigInteger.TEN.pow(highest - digits))
                            .multiply(all[0].mostWays()));
        }
        return Choice.of(weights);
    }

    /// Such columns for what is asked, where there are few enough kinds of them to be counted.
    static Optional<Source> of(Asked asked, DigitsEach each) {
        int rows = asked.shape().rows();
        Lengths lengths = asked.shape().lengths();
        if (rows > Leads.MOST_ROWS) {
            return Optional.empty();
        }
        List<Long> kinds = Leads.all(rows, each.most());
        int numbers = lengths.mostInAll(rows) - lengths.leastInAll(rows) + 1;
        return kinds.isEmpty() || kinds.size() * numbers > MOST_KINDS
                ? Optional.empty()
                : Optional.of(new LeadColumns(asked, each, kinds));
    }

    @Override
    public boolean draw(Draws draws, Facts into) {
        int over = totals.draw(draws);
        patterns.draw(fewest + over, draws, lengths);
        signs.draw(draws, into);
        if (!drawLeads(draws, into)) {
            return false;
        }
        long kind = kind();
        if (Leads.most(kind) > mostTimes) {
            return false;
        }
        Fill fill = fills.get(over).of(kind);
        if (!fill.isKept(draws)) {
            return false;
        }
        fill.draw(draws, times, others);
        bag.fill(others);
        bag.empty(draws);
        int from = 0;
        for (int row = 0; row < leads.length; row++) {
            into.put(row, bag.row(leads[row], from, lengths[row]), into.isMinus(row));
            from += lengths[row] - 1;
        }
        return true;
    }

    /// Draws leads; false where they show that this is no column.
    private boolean drawLeads(Draws draws, Facts facts) {
        Dice.roll(draws, sides, 0, sides.length, leads);
        bounds.clear();
        int before = 10;
        for (int row = 0; row < leads.length; row++) {
            int lead = leads[row] + 1;
            lead += differ && lead >= before ? 1 : 0;
            if (!bounds.add(facts.isMinus(row), lead, lengths[row])) {
                return false;
            }
            leads[row] = lead;
            before = lead;
        }
        return bounds.mayEnd();
    }

    /// How often digits are leads.
    private long kind() {
        Arrays.fill(times, 0);
        long kind = Leads.NONE;
        for (int lead : leads) {
            kind = Leads.with(kind, times[lead]++);
        }
        return kind;
    }

    @Override
    public boolean grants(Condition condition) {
        return condition instanceof DigitsEach || (differ && condition instanceof LeadsDiffer);
    }
}
