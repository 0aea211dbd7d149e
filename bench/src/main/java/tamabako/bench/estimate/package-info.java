/// How long the estimators take, beside R.
@NullMarked
package tamabako.bench.estimate;

import org.jspecify.annotations.NullMarked;
