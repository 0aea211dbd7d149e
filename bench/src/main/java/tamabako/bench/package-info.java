/// What Tamabako costs beside what a strong programmer would reach for otherwise. Every benchmark
/// holds both sides to the same result before it measures either.
@NullMarked
package tamabako.bench;

import org.jspecify.annotations.NullMarked;
