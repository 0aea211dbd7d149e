package tamabako.bench.making;

import java.util.function.LongFunction;

/// A way to make columns.
///
/// @param name what it is called in the results
/// @param next makes a column; it is given a number that it never gets again
record Peer(String name, LongFunction<long[]> next) {

    long[] make(long number) {
        return next.apply(number);
    }
}
