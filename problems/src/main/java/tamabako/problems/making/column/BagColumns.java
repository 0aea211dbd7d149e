package tamabako.problems.making.column;

import tamabako.problems.making.draw.Draws;

/// Draws columns whose digits come as often as asked, and none of them oftener than the others.
///
/// The leads are drawn first: they nearly tell whether the total stays above zero and how long the
/// answer gets, and where that fails the rest need not be drawn.
final class BagColumns implements Source {

    private final Bags bags;
    private final SignPatterns signs;
    private final LeadBounds bounds;
    private final int[] lengths;
    private final int[] counts = new int[10];
    private final int[] leads;
    private final byte[] bag;

    /// Columns of which the leads say that they may hold.
    static BagColumns of(Asked asked, Bags bags) {
        return new BagColumns(asked, bags, LeadBounds.of(asked));
    }

    /// Columns with these digits, whatever else is asked.
    static BagColumns unbounded(Asked asked, Bags bags) {
        return new BagColumns(asked, bags, LeadBounds.none());
    }

    private BagColumns(Asked asked, Bags bags, LeadBounds bounds) {
        Shape shape = asked.shape();
        this.bags = bags;
        this.signs = asked.patterns();
        this.bounds = bounds;
        this.lengths = new int[shape.rows()];
        this.leads = new int[shape.rows()];
        this.bag = new byte[shape.lengths().mostInAll(shape.rows())];
    }

    @Override
    public boolean draw(Draws draws, Facts into) {
        int all = bags.draw(draws, lengths, counts);
        signs.draw(draws, into);
        int left = fill();
        bounds.clear();
        for (int row = 0; row < leads.length; row++) {
            int taken = draws.pick(left--);
            leads[row] = bag[taken];
            bag[taken] = bag[left];
            if (!bounds.add(into.isMinus(row), leads[row], lengths[row])) {
                return false;
            }
        }
        if (!bounds.mayEnd()) {
            return false;
        }
        for (int i = 0; i < counts[0]; i++) {
            bag[left++] = 0;
        }
        assert left == all - leads.length;
        write(left, draws, into);
        return true;
    }

    @Override
    public boolean grants(Condition condition) {
        return condition instanceof DigitCondition.DigitsEach;
    }

    /// Fills the bag with all digits but 0; how many they are.
    private int fill() {
        int size = 0;
        for (byte digit = 1; digit <= 9; digit++) {
            for (int i = 0; i < counts[digit]; i++) {
                bag[size++] = digit;
            }
        }
        return size;
    }

    private void write(int inBag, Draws draws, Facts into) {
        int left = inBag;
        for (int row = 0; row < leads.length; row++) {
            long size = Digits.in(lengths[row] - 1, leads[row]);
            for (int place = lengths[row] - 2; place >= 0; place--) {
                int taken = draws.pick(left--);
                size |= Digits.in(place, bag[taken]);
                bag[taken] = bag[left];
            }
            into.put(row, size, into.isMinus(row));
        }
    }
}
