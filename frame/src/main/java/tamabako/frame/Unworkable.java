package tamabako.frame;

/// Says that a sum cannot be worked as asked. The [#reason()] names the value and the limit; the
/// message tells it in English, and the `words` package in other languages.
public final class Unworkable extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Reason reason;

    /// A sum that cannot be worked for `reason`.
    public Unworkable(Reason reason) {
        super(reason.message());
        this.reason = reason;
    }

    /// What was wrong, with its values.
    public Reason reason() {
        return reason;
    }

    /// What was wrong: each case names the value and the limit.
    public sealed interface Reason {

        /// What, where and how to mend it, in English.
        String message();

        /// The work needs more rods than the frame has.
        record TooLong(String number, int needed, int limit) implements Reason {
            @Override
            public String message() {
                return ("%s needs %d rods to be worked, and the frame has %d. Use a shorter number or"
                                + " a longer frame (at most %d rods).")
                        .formatted(number, needed, limit, Frame.MOST_RODS);
            }
        }

        /// A carry or a borrow runs off the frame.
        record FrameTooShort(int needed, int rods) implements Reason {
            @Override
            public String message() {
                return ("This sum runs off the frame: it needs %d rods, and the frame has %d. Use a"
                                + " longer frame (at most %d rods) or smaller numbers.")
                        .formatted(needed, rods, Frame.MOST_RODS);
            }
        }

        /// A frame of that many rods cannot be had.
        record NoSuchFrame(int rods, int limit) implements Reason {
            @Override
            public String message() {
                return "A frame has 1 to %d rods, not %d. Ask for a number in that range."
                        .formatted(limit, rods);
            }
        }

        /// The unit rod asked for is not on the frame, or leaves no room for the sum.
        record NoSuchUnitRod(int unit, int rods) implements Reason {
            @Override
            public String message() {
                return ("Rod %d from the left cannot be the unit rod on a frame of %d rods for this"
                                + " sum. Choose another unit rod or more rods.")
                        .formatted(unit, rods);
            }
        }

        /// Division by zero.
        record ZeroDivisor(String dividend) implements Reason {
            @Override
            public String message() {
                return "%s cannot be divided by 0. Give a divisor other than 0."
                        .formatted(dividend);
            }
        }

        /// A root of a number below zero.
        record NegativeRoot(String of) implements Reason {
            @Override
            public String message() {
                return "%s is below 0, so it has no root on the frame. Give a number of 0 or more."
                        .formatted(of);
            }
        }

        /// A factor, dividend or divisor below zero.
        record NegativeOperand(String number) implements Reason {
            @Override
            public String message() {
                return ("%s is below 0. Products and quotients are worked with numbers of 0 or more;"
                                + " work it without the sign.")
                        .formatted(number);
            }
        }

        /// Only square and cube roots are worked.
        record NoSuchRoot(int degree) implements Reason {
            @Override
            public String message() {
                return "Roots of degree 2 and 3 are worked, not %d. Ask for a square or cube root."
                        .formatted(degree);
            }
        }

        /// More decimal places of the answer than can be asked for.
        record TooManyPlaces(int places, int limit) implements Reason {
            @Override
            public String message() {
                return ("An answer is worked to 0 to %d decimal places, not %d. Ask for a number of"
                                + " places in that range.")
                        .formatted(limit, places);
            }
        }

        /// A column without rows.
        record NoRows() implements Reason {
            @Override
            public String message() {
                return "A column needs at least one row. Give a number to start from.";
            }
        }
    }
}
