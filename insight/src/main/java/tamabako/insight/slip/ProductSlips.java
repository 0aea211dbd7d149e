package tamabako.insight.slip;

import tamabako.frame.Cause;
import tamabako.problems.Mode;

/// The slips that can be made in a product: multiplicand digits from the last, multiplier digits
/// from the first, every partial product two rods wide.
final class ProductSlips {

    /// A one-digit product goes so many times as often as a longer one on the rod left of its own:
    /// its empty tens rod is forgotten (ga-byō).
    private static final double ONE_DIGIT = 3;

    /// How often all products of a digit are misplaced or left out, beside one of them.
    private static final double ALL = 0.5;

    /// The same for a digit of the multiplier, as where rows of products are written one below the
    /// other and not shifted; on the frame they are not worked one after another.
    private static final double ALL_OF_MULTIPLIER = 0.1;

    /// How often a zero is closed up, beside its rod not being passed over.
    private static final double CLOSED_UP = 0.5;

    private final long multiplicand;
    private final long multiplier;
    private final int lowest;
    private final Mode mode;
    private final Effect effect;
    private final Events events;

    /// @param lowest the power of ten of the exact product's last place
    /// @param effect what a change of the exact product does to the answer
    ProductSlips(
            long multiplicand,
            long multiplier,
            int lowest,
            Mode mode,
            Effect effect,
            Events events) {
        this.mode = mode;
        this.multiplicand = multiplicand;
        this.multiplier = multiplier;
        this.lowest = lowest;
        this.effect = effect;
        this.events = events;
    }

    /// Adds the slips of both operands.
    ///
    /// @param places the decimal places of the multiplicand
    void addOperands(int places) {
        Effect first = change -> effect.tenths(change * multiplier);
        Effect second = change -> effect.tenths(change * multiplicand);
        OperandSlips operands = new OperandSlips(mode, events);
        operands.add(Cause.Operand.MULTIPLICAND, multiplicand, -places, first);
        operands.add(Cause.Operand.MULTIPLIER, multiplier, lowest + places, second);
    }

    /// Adds the slips of working.
    void addWork() {
        for (int i = 0; i < Tens.length(multiplicand); i++) {
            int first = Tens.digit(multiplicand, i);
            for (int j = 0; j < Tens.length(multiplier) && first > 0; j++) {
                partial(first, Tens.digit(multiplier, j), i + j);
            }
            if (first > 0 && multiplier > 9) {
                run(Cause.Operand.MULTIPLICAND, first, i, first * multiplier, ALL);
            }
        }
        for (int j = 0; j < Tens.length(multiplier) && multiplier > 9; j++) {
            int second = Tens.digit(multiplier, j);
            if (second > 0 && multiplicand > 9) {
                long products = second * multiplicand;
                run(Cause.Operand.MULTIPLIER, second, j, products, ALL_OF_MULTIPLIER);
            }
        }
        StepLog log = work(multiplicand, multiplier);
        if (mode == Mode.FRAME) {
            new BeadSlips(log, lowest, effect, events).add();
        } else {
            MindSlips.carriesLost(log, lowest, effect, events);
        }
        zeros();
    }

    /// The steps that the products are added with: the same as in
    /// [tamabako.frame.product.ProductWork]; a test compares them.
    static StepLog work(long multiplicand, long multiplier) {
        FastHand hand = new FastHand();
        for (int i = 0; i < Tens.length(multiplicand); i++) {
            int first = Tens.digit(multiplicand, i);
            for (int j = Tens.length(multiplier) - 1; j >= 0; j--) {
                int second = Tens.digit(multiplier, j);
                int where = Code.product(first, second);
                hand.add(i + j + 1, first * second / 10, StepLog.Role.ENTRY, where);
                hand.add(i + j, first * second % 10, StepLog.Role.ENTRY, where);
            }
        }
        return hand.log();
    }

    /// @param rod the rod of the product's units
    private void partial(int first, int second, int rod) {
        int where = Code.product(first, second);
        long product = (long) first * second * Tens.power(rod);
        TableSlips.add(
                first,
                second,
                rod + lowest,
                wrong -> effect.tenths(wrong * Tens.power(rod) - product),
                events);
        if (second > 0) {
            double left = first * second < 10 ? ONE_DIGIT : 1;
            events.add(
                    effect.tenths(9 * product),
                    code(Way.PRODUCT_ONE_ROD_LEFT, where, rod),
                    left / 2);
            long right = product / 10 - product;
            events.add(effect.tenths(right), code(Way.PRODUCT_ONE_ROD_RIGHT, where, rod), 0.5);
            events.add(effect.tenths(-product), code(Way.PRODUCT_SKIPPED, where, rod), 1);
        }
    }

    private long code(Way way, int where, int rod) {
        return Code.of(way, where, rod + lowest);
    }

    /// All products of the digit at `place` of an operand go wrong together.
    ///
    /// @param all their sum, in units of that place
    private void run(Cause.Operand operand, int digit, int place, long all, double worth) {
        long products = all * Tens.power(place);
        int where = Code.operand(operand);
        int mark = events.mark();
        events.add(
                effect.tenths(9 * products),
                Code.with(code(Way.PRODUCTS_ONE_ROD_LEFT, where, place), digit));
        events.add(
                effect.tenths(products / 10 - products),
                Code.with(code(Way.PRODUCTS_ONE_ROD_RIGHT, where, place), digit));
        events.share(mark, worth);
        events.add(
                effect.tenths(-products),
                Code.with(code(Way.PRODUCTS_SKIPPED, where, place), digit),
                worth);
    }

    /// The multiplier's zero is not given its rod, so the products after it go one rod left; or it
    /// is not seen at all.
    private void zeros() {
        int where = Code.operand(Cause.Operand.MULTIPLIER);
        for (int place = 1; place < Tens.length(multiplier); place++) {
            if (Tens.digit(multiplier, place) == 0) {
                long low = multiplier % Tens.power(place);
                long change = 9 * low * multiplicand;
                events.add(effect.tenths(change), Code.of(Way.ZERO_NOT_SHIFTED, where), 1);
                long high = multiplier / Tens.power(place + 1);
                long closed = (high * Tens.power(place) + low - multiplier) * multiplicand;
                long code = code(Way.ZERO_CLOSED_UP, where, place);
                events.add(effect.tenths(closed), code, CLOSED_UP);
            }
        }
    }
}
