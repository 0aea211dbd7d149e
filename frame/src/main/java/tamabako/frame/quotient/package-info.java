/// Quotients (warizan): modern division (shōjohō), with revision of the trial digit both ways.
///
/// The divisor (hō) stands at the far left, the dividend (jitsu) right of a gap in which the
/// quotient grows. A trial digit is found from the leading digits, its products with the divisor's
/// digits are taken off from the left, and where one cannot be taken the digit is made smaller and
/// what was taken too much is given back (modoshizan).
///
/// One worked example, 84 ÷ 28 with the fifth rod as unit rod (states are the digits of the rods
/// from the left):
///
/// ```
/// 28000084  set 28 and 84
/// 28004084  8 by 2: try 4
/// 28004004  4 × 2 = 8 comes off
/// 28003024  4 × 8 = 32 cannot: 3, and give back 2
/// 28003000  3 × 8 = 24 comes off: 3
/// ```
///
/// Source: Heffelfinger and Flom, Abacus: Mystery of the Bead; Using an Abacus, Wikibooks.
@NullMarked
package tamabako.frame.quotient;

import org.jspecify.annotations.NullMarked;
