/// How fast and how evenly columns are made, beside general means: a constraint solver, and
/// throwing away what does not fit.
///
/// [tamabako.bench.making.MakingBench] holds every side to the same wish before it measures any;
/// [tamabako.bench.making.BiasTable] compares what is made with what plain rejection leaves.
@NullMarked
package tamabako.bench.making;

import org.jspecify.annotations.NullMarked;
