/// How well the judgements of [tamabako.insight] hold on simulated pupils, whose slips are known.
///
/// Seeds are fixed, and the problems are others than those that anything was tuned on. The results
/// stand in docs/validation.md.
@NullMarked
package tamabako.bench.insight;

import org.jspecify.annotations.NullMarked;
