package tamabako.testkit;

import java.util.function.Consumer;
import java.util.stream.LongStream;

/// A property is a claim that holds for every drawn case.
public final class Property {

    private Property() {}

    /// Runs `property` on the draws of seeds 0 to `cases` - 1 and names the first seed that breaks
    /// it. With `-Dseed=N` only that seed is run.
    public static void forSeeds(long cases, Consumer<Draw> property) {
        Long one = Long.getLong("seed");
        LongStream seeds = one == null ? LongStream.range(0, cases) : LongStream.of(one);
        seeds.forEach(seed -> {
            try {
                property.accept(new Draw(seed));
            } catch (AssertionError | RuntimeException broken) {
                throw new AssertionError(
                        "Broken by seed %d. To see it again: -Dseed=%<d".formatted(seed), broken);
            }
        });
    }
}
