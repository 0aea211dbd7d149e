package tamabako.insight.slip;

import java.util.Locale;

/// How a slip of one kind came about: each way has a sentence of its own.
///
/// What the digits of a [Slip] mean is said with each way; a way without a note has none.
public enum Way {
    CARRY_LEFT_OUT(SlipKind.CARRY_LEFT_OUT),
    BORROW_LEFT_OUT(SlipKind.BORROW_LEFT_OUT),
    /// The right complement, and one more or less that was used.
    TEN_COMPLEMENT_OFF(SlipKind.TEN_COMPLEMENT_WRONG),
    /// The right complement, and the digit itself that was used.
    TEN_COMPLEMENT_DIGIT(SlipKind.TEN_COMPLEMENT_WRONG),
    /// The right complement, and the complement to five that was used.
    TEN_COMPLEMENT_TO_FIVE(SlipKind.TEN_COMPLEMENT_WRONG),
    /// The complement that was left out.
    TEN_COMPLEMENT_LEFT_OUT(SlipKind.TEN_COMPLEMENT_WRONG),
    /// The complement that was moved the wrong way.
    TEN_COMPLEMENT_REVERSED(SlipKind.TEN_COMPLEMENT_WRONG),
    /// The right complement, and one more or less that was used.
    FIVE_COMPLEMENT_OFF(SlipKind.FIVE_COMPLEMENT_WRONG),
    /// The right complement, and the digit itself that was used.
    FIVE_COMPLEMENT_DIGIT(SlipKind.FIVE_COMPLEMENT_WRONG),
    /// The complement that was left out.
    FIVE_COMPLEMENT_LEFT_OUT(SlipKind.FIVE_COMPLEMENT_WRONG),
    FIVE_LEFT_OUT(SlipKind.FIVE_COMPLEMENT_WRONG),
    ONE_BEAD_MORE(SlipKind.ONE_BEAD),
    ONE_BEAD_LESS(SlipKind.ONE_BEAD),
    FIVE_BEAD_MORE(SlipKind.FIVE_BEAD),
    FIVE_BEAD_LESS(SlipKind.FIVE_BEAD),
    /// The digit.
    DIGIT_ONE_ROD_LEFT(SlipKind.DIGIT_ON_NEIGHBOUR_ROD),
    /// The digit.
    DIGIT_ONE_ROD_RIGHT(SlipKind.DIGIT_ON_NEIGHBOUR_ROD),
    ROW_ONE_ROD_LEFT(SlipKind.ROW_ON_NEIGHBOUR_ROD),
    ROW_ONE_ROD_RIGHT(SlipKind.ROW_ON_NEIGHBOUR_ROD),
    /// The digit, and what it was read as.
    DIGIT_MISREAD(SlipKind.DIGIT_MISREAD),
    /// The digit.
    DIGIT_SKIPPED(SlipKind.DIGIT_SKIPPED),
    ROW_SKIPPED(SlipKind.ROW_SKIPPED),
    ROW_TWICE(SlipKind.ROW_TWICE),
    MINUS_READ_AS_PLUS(SlipKind.SIGN_MISSED),
    PLUS_READ_AS_MINUS(SlipKind.SIGN_MISSED),
    /// The two digits, as they stand.
    DIGITS_SWAPPED(SlipKind.DIGITS_SWAPPED_READING),
    LINE_JUMP_BELOW(SlipKind.LINE_JUMP),
    LINE_JUMP_ABOVE(SlipKind.LINE_JUMP),
    /// The digit, and what was written.
    WRITTEN_DIGIT(SlipKind.WRITTEN_DIGIT),
    /// The two digits, as they should stand.
    WRITTEN_SWAPPED(SlipKind.WRITTEN_SWAPPED),
    /// The digit.
    WRITTEN_DIGIT_DROPPED(SlipKind.WRITTEN_LENGTH),
    /// The digit.
    WRITTEN_DIGIT_TWICE(SlipKind.WRITTEN_LENGTH),
    WRITTEN_POINT_LEFT(SlipKind.WRITTEN_LENGTH),
    WRITTEN_POINT_RIGHT(SlipKind.WRITTEN_LENGTH),
    /// The right product, and what was taken for it.
    TABLE_SLIP(SlipKind.TABLE_SLIP),
    PRODUCT_ONE_ROD_LEFT(SlipKind.PRODUCT_MISPLACED),
    PRODUCT_ONE_ROD_RIGHT(SlipKind.PRODUCT_MISPLACED),
    /// The digit of an operand whose products all went one rod left.
    PRODUCTS_ONE_ROD_LEFT(SlipKind.PRODUCT_MISPLACED),
    /// The digit of an operand whose products all went one rod right.
    PRODUCTS_ONE_ROD_RIGHT(SlipKind.PRODUCT_MISPLACED),
    ZERO_NOT_SHIFTED(SlipKind.PRODUCT_MISPLACED),
    /// A 0 within the multiplier was missed, and its empty place closed up.
    ZERO_CLOSED_UP(SlipKind.PRODUCT_MISPLACED),
    PRODUCT_SKIPPED(SlipKind.PRODUCT_SKIPPED),
    /// The digit of an operand whose products were all left out.
    PRODUCTS_SKIPPED(SlipKind.PRODUCT_SKIPPED),
    /// The right digit.
    QUOTIENT_TOO_SMALL(SlipKind.QUOTIENT_OFF_BY_ONE),
    /// The right digit.
    QUOTIENT_TOO_LARGE(SlipKind.QUOTIENT_OFF_BY_ONE),
    /// The right digit, and the one that was set.
    ROOT_DIGIT_OFF(SlipKind.QUOTIENT_OFF_BY_ONE),
    QUOTIENT_PLACE_CLOSED(SlipKind.QUOTIENT_PLACE_MISSED),
    QUOTIENT_PLACE_OPENED(SlipKind.QUOTIENT_PLACE_MISSED),
    /// Every rod was read to nine, the last one too.
    COMPLEMENT_ALL_NINES(SlipKind.COMPLEMENT_MISREAD),
    /// Every rod was read to ten.
    COMPLEMENT_ALL_TENS(SlipKind.COMPLEMENT_MISREAD),
    /// The last rod with beads was read to nine, and the zeros after it stay.
    COMPLEMENT_LAST_NINE(SlipKind.COMPLEMENT_MISREAD),
    /// As the one before, and the zeros were lost.
    COMPLEMENT_LAST_NINE_ZEROS_LOST(SlipKind.COMPLEMENT_MISREAD),
    /// Read well, but the zeros at the end were lost.
    COMPLEMENT_ZEROS_LOST(SlipKind.COMPLEMENT_MISREAD),
    /// The beads were read as they stand.
    COMPLEMENT_NOT_TAKEN(SlipKind.COMPLEMENT_MISREAD),
    MINUS_NOT_WRITTEN(SlipKind.COMPLEMENT_MISREAD),
    LOAN_NOT_RETURNED(SlipKind.COMPLEMENT_MISREAD),
    /// The digit, and what it was heard as.
    DIGIT_MISHEARD(SlipKind.DIGIT_MISHEARD),
    PLACE_HEARD_TOO_LARGE(SlipKind.PLACE_MISHEARD),
    PLACE_HEARD_TOO_SMALL(SlipKind.PLACE_MISHEARD),
    CARRY_LOST(SlipKind.CARRY_LOST),
    BORROW_LOST(SlipKind.CARRY_LOST),
    /// The digit of the total, and what it was kept as.
    TOTAL_DIGIT_CHANGED(SlipKind.TOTAL_NOT_KEPT),
    /// The two digits of the total, as they stood.
    TOTAL_DIGITS_SWAPPED(SlipKind.TOTAL_NOT_KEPT),
    NONE_KNOWN(SlipKind.NONE_KNOWN);

    private final SlipKind kind;

    Way(SlipKind kind) {
        this.kind = kind;
    }

    /// The kind of slip that this is a way of.
    public SlipKind kind() {
        return kind;
    }

    /// The word used in the files of rates and sentences, such as `ten-complement-digit`.
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /// Its number in packed arrays, from 0; it never leaves the memory.
    @SuppressWarnings("EnumOrdinal")
    int index() {
        return ordinal();
    }
}
