package tamabako.frame;

import java.math.BigDecimal;

/// A number that a product, quotient or root is worked from, with the digits that are set for it:
/// 0.35 is set as 3 and 5, and 20 as 2.
///
/// @param operand what the number is in its sum
/// @param number 0 or more, without zeros at its right end
public record Given(Cause.Operand operand, BigDecimal number) {

    /// Numbers that reach further than this from the point are not looked at digit by digit.
    private static final int LONGEST = 64;

    /// @throws Unworkable if the number is below zero, or far too long for any frame
    public Given {
        long reach = reach(number);
        if (reach > LONGEST) {
            throw new Unworkable(
                    new Unworkable.Reason.TooLong(
                            shortened(number),
                            (int) Math.min(reach, Integer.MAX_VALUE),
                            Frame.MOST_RODS));
        }
        if (number.signum() < 0) {
            throw new Unworkable(belowZero(operand, number.toPlainString()));
        }
        number = number.stripTrailingZeros();
    }

    /// How far the digits reach from the point, to the left or to the right.
    private static long reach(BigDecimal number) {
        if (number.signum() == 0) {
            return 1;
        }
        long whole = (long) number.precision() - number.scale();
        return Math.max(number.precision(), Math.max(number.scale(), whole));
    }

    private static String shortened(BigDecimal number) {
        String written = number.toString();
        return written.length() > LONGEST ? written.substring(0, LONGEST) + "…" : written;
    }

    private static Unworkable.Reason belowZero(Cause.Operand operand, String number) {
        return switch (operand) {
            case RADICAND -> new Unworkable.Reason.NegativeRoot(number);
            case FIRST_ROW, MULTIPLICAND, MULTIPLIER, DIVIDEND, DIVISOR ->
                    new Unworkable.Reason.NegativeOperand(number);
        };
    }

    /// Whether the number is 0.
    public boolean isZero() {
        return number.signum() == 0;
    }

    /// The significant digits from the left, zeros between them kept: 3 and 5 for 0.35. Zero has
    /// the one digit 0.
    public int[] digits() {
        return number.unscaledValue().toString().chars().map(figure -> figure - '0').toArray();
    }

    /// How many significant digits there are.
    public int count() {
        return number.precision();
    }

    /// How many whole digits there are, counted as [Figures#wholeDigits(BigDecimal)] does.
    public int wholeDigits() {
        return Figures.wholeDigits(number);
    }

    /// The place of the digit at `index` of [#digits()], as a power of ten.
    public int place(int index) {
        return wholeDigits() - 1 - index;
    }

    /// The lowest place that is written: 0 for a whole number, -2 for 0.35.
    public int lastPlace() {
        return Math.min(0, -number.scale());
    }

    /// Sets the digits on a frame from the left, the first on `rod`.
    public void set(Hand hand, int rod) {
        int[] digits = digits();
        for (int i = 0; i < digits.length; i++) {
            hand.add(rod - i, digits[i], new Cause.Setting(operand, place(i)));
        }
    }

    /// The number in plain figures.
    public String figures() {
        return number.toPlainString();
    }
}
