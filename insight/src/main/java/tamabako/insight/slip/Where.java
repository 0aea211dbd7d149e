package tamabako.insight.slip;

import tamabako.frame.Cause;

/// Which part of the sum a slip belongs to.
public sealed interface Where {

    /// A row of a column; the first row is row 1.
    record Row(int row) implements Where {}

    /// A number that a product, quotient or root starts from.
    record Operand(Cause.Operand operand) implements Where {}

    /// A partial product: multiplicand digit times multiplier digit, or quotient digit times
    /// divisor digit.
    record PartialProduct(int first, int second) implements Where {}

    /// The answer: its digits on the frame, or as they were written.
    record Answer() implements Where {}
}
