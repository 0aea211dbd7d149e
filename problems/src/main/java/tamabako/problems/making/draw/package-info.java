/// What all makers draw with: a stream of chance from one seed, and powers of ten.
///
/// `new Draws(7).between(1, 6)` throws a die; the seed 7 throws the same one on every machine.
@NullMarked
package tamabako.problems.making.draw;

import org.jspecify.annotations.NullMarked;
