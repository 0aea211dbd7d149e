package tamabako.insight.slip;

/// A division worked by two [FastHand]s, one on the rods of the quotient and one on those of the
/// dividend, with the right digit at the first trial.
///
/// The same steps as [tamabako.frame.quotient.QuotientWork] takes where nothing is revised; a test
/// compares them.
final class FastDivision {

    private final FastHand set = new FastHand();
    private final FastHand rest;
    private final int[] starts;

    FastDivision(long dividend, long divisor) {
        this.rest = FastHand.holding(dividend);
        long quotient = dividend / divisor;
        this.starts = new int[Tens.length(quotient) + 1];
        for (int place = Tens.length(quotient) - 1; place >= 0; place--) {
            starts[place + 1] = rest.log().size();
            int digit = Tens.digit(quotient, place);
            set.add(place, digit, StepLog.Role.ENTRY, Code.answer());
            for (int j = Tens.length(divisor) - 1; j >= 0; j--) {
                take(digit, Tens.digit(divisor, j), place + j);
            }
        }
        starts[0] = rest.log().size();
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

    /// The first of the steps that take off the products of the quotient's digit at `place`.
    int start(int place) {
        return starts[place + 1];
    }

    /// The step after the last of them.
    int end(int place) {
        return starts[place];
    }
}
