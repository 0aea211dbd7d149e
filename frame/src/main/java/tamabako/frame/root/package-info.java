/// Roots (kaihō): square roots (kaihei) by half-nine-nine or by the double root, cube roots
/// (kairyū) by the triple root.
///
/// The radicand is cut into groups of two digits, or three, from the point; each gives one digit of
/// the root. The first digit comes from the first group; every next one is found by division with
/// the root so far, or its multiple, as divisor, and revised as in division.
///
/// One worked example, √729 by half-nine-nine, the root on the second and third rods (states are
/// the digits of the rods from the left):
///
/// ```
/// 0007290  set 729; the groups are 7 and 29
/// 0203290  2 is the first digit; 2 × 2 = 4 comes off
/// 0201645  the remainder is halved
/// 0280045  16 by 2: try 8, and 8 × 2 = 16 comes off
/// 0270245  half of 8 × 8 is 32 and cannot: 7, and give back 2
/// 0270000  half of 7 × 7 is 24.5 and comes off: 27
/// ```
///
/// Source: F. Kato's method in Heffelfinger and Flom, Abacus: Mystery of the Bead.
@NullMarked
package tamabako.frame.root;

import org.jspecify.annotations.NullMarked;
