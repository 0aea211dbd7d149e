package tamabako.insight.slip;

import java.util.Locale;

/// The kinds of slip that the finder knows, in the order that settles ties.
///
/// Source: the bead errors that teachers name (row skipped or entered twice, neighbour rod, bead
/// slipped, five-bead left on, carry dropped, wrong complement, misread and swapped digits) and the
/// errors of written arithmetic; common practice, no published list with frequencies.
public enum SlipKind {
    /// A carry to the next rod was not made.
    CARRY_LEFT_OUT,
    /// A borrow from the next rod was not made.
    BORROW_LEFT_OUT,
    /// The complement to ten was wrong, left out, or moved the wrong way.
    TEN_COMPLEMENT_WRONG,
    /// The complement to five was wrong, or one half of it was left out.
    FIVE_COMPLEMENT_WRONG,
    /// One lower bead too many or too few.
    ONE_BEAD,
    /// An upper bead on the wrong side.
    FIVE_BEAD,
    /// One digit went on the rod beside its own.
    DIGIT_ON_NEIGHBOUR_ROD,
    /// A whole row went in one rod too far left or right.
    ROW_ON_NEIGHBOUR_ROD,
    /// A digit was read as another.
    DIGIT_MISREAD,
    /// A digit was left out.
    DIGIT_SKIPPED,
    /// A row was left out.
    ROW_SKIPPED,
    /// A row went in twice.
    ROW_TWICE,
    /// A row was added that should be taken, or the reverse.
    SIGN_MISSED,
    /// Two digits side by side were read the wrong way round.
    DIGITS_SWAPPED_READING,
    /// The eye jumped to a neighbouring row in the middle of a row.
    LINE_JUMP,
    /// The beads were right; one digit was written wrong.
    WRITTEN_DIGIT,
    /// The beads were right; two digits were written the wrong way round.
    WRITTEN_SWAPPED,
    /// The beads were right; a digit or a zero too many or too few, or the point moved.
    WRITTEN_LENGTH,
    /// A wrong product from the multiplication table.
    TABLE_SLIP,
    /// A partial product on the wrong rods (a one-digit product not shifted: ga-byō).
    PRODUCT_MISPLACED,
    /// A partial product left out.
    PRODUCT_SKIPPED,
    /// A digit of a quotient or root one too small or too large and left so.
    QUOTIENT_OFF_BY_ONE,
    /// An empty place of the quotient was closed up, or one opened.
    QUOTIENT_PLACE_MISSED,
    /// A total below zero was read or written wrong.
    COMPLEMENT_MISREAD,
    /// A digit was heard as another.
    DIGIT_MISHEARD,
    /// A called number was heard ten times too large or too small.
    PLACE_MISHEARD,
    /// In the head, a carry or borrow was not kept.
    CARRY_LOST,
    /// In the head, the total so far was not kept as it was.
    TOTAL_NOT_KEPT,
    /// No slip that the finder knows: copied, guessed, too many slips at once, another problem's
    /// answer.
    NONE_KNOWN;

    /// The word used in files and commands, such as `carry-left-out`.
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /// Its number in packed arrays, from 0; it never leaves the memory.
    @SuppressWarnings("EnumOrdinal")
    int index() {
        return ordinal();
    }
}
