package tamabako.insight.slip;

/// A division worked by two [FastHand]s, one on the rods of the quotient and one on those of the
/// dividend, with the right digit at the first trial.
///
/// The same steps as [tamabako.frame.quotient.QuotientWork] takes where nothing is revised; a test
/// compares them.
final class FastDivision {

    private final FastHand set = new FastHand();
    private final FastHand rest;

    FastDivision(long dividend, long divisor) {
        this.rest = FastHand.holding(dividend);
        long quotient = dividend / divisor;
        for (int place = Tens.length(quotient) - 1; place >= 0; place--) {
            int digit = Tens.digit(quotient, place);
            set.add(place, digit, StepLog.Role.ENTRY, Code.answer());
            for (int j = Tens.length(divisor) - 1; j >= 0; j--) {
                take(digit, Tens.digit(divisor, j), place + j);
            }
        }
    }

    private void take(int first, int second, int rod) {
        int where = Code.product(first, second);
        rest.take(rod + 1, first * second / 10, StepLog.Role.ENTRY, where);
        rest.take(rod, first * second % 10, StepLog.Role.ENTRY, where);
    }

    /// The steps that set the digits of the quotient.
    StepLog set() {
        return set.log();
    }

    /// The steps that take the products off.
    StepLog taken() {
        return rest.log();
    }
}
