package tamabako.frame.root;

import tamabako.frame.Cause;
import tamabako.frame.quotient.QuotientDigit;

/// What the steps of a root digit are noted as.
///
/// @param index the digit's number in the root, from 1 at its left
/// @param place the digit's place in the root, as a power of ten
record OfRoot(int index, int place) implements QuotientDigit.Reasons {

    @Override
    public Cause set(int digit) {
        return new Cause.RootDigit(index, digit);
    }

    @Override
    public Cause taken(int digit, int against, int againstDigit) {
        return new Cause.RootProductTaken(index, digit, against, againstDigit);
    }

    @Override
    public Cause revised(int digit) {
        return new Cause.RevisedDown(place, digit);
    }
}
