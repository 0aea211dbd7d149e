/// Products (kakezan): one factor set beside the other, and worked away digit by digit.
///
/// The multiplier (hō) stands at the far left, the multiplicand (jitsu) so far left of the unit rod
/// as both have whole digits together. Its last digit is worked first: every product of two digits
/// is written with two digits, just right of the digit worked, and that digit is then cleared.
///
/// One worked example, 306 × 4 with the eighth rod as unit rod (states are the digits of the rods
/// from the left):
///
/// ```
/// 400306000  set 4, and 306 four rods left of the unit rod
/// 400306240  6 × 4 = 24
/// 400300240  clear the 6
/// 400312240  3 × 4 = 12
/// 400012240  clear the 3: 1224
/// ```
///
/// Source: Heffelfinger and Flom, Abacus: Mystery of the Bead.
@NullMarked
package tamabako.frame.product;

import org.jspecify.annotations.NullMarked;
