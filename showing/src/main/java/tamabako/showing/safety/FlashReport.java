package tamabako.showing.safety;

/// What was found in a showing.
///
/// @param verdict whether it may be shown
/// @param flashes flashes in the worst second, all changes counted together; halves are single
///   transitions
/// @param flashesAtOnePlace the same for the pixel that flashes most
/// @param boxWidth the width of the box around what flashes, at the worst change, in pixels
/// @param boxHeight its height
/// @param boxShare the part of the field that this box fills at most, 0 to 1
/// @param inkShare the part of the field that pixels which change fill at most, 0 to 1
/// @param shortestPeriod the shortest time from one onset to the next in milliseconds, infinite
///   where there are not two
/// @param restAdvised whether large numbers at two or three a second go on for more than 5 s, which
///   is within the limits and still tiring: smaller numbers or a rest are better
public record FlashReport(
        Verdict verdict,
        double flashes,
        double flashesAtOnePlace,
        int boxWidth,
        int boxHeight,
        double boxShare,
        double inkShare,
        double shortestPeriod,
        boolean restAdvised) {}
