/// How long the estimators take, beside R, and what they make of simulated pupils.
@NullMarked
package tamabako.bench.estimate;

import org.jspecify.annotations.NullMarked;
