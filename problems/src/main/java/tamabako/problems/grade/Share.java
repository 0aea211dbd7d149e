package tamabako.problems.grade;

import java.util.OptionalInt;

/// Some problems of a batch.
///
/// @param count how many
/// @param inSecondHalf how many of them stand in the second half of the batch, the rest in the
///   first; empty where it does not matter. The middle problem of an odd batch is in the second
///   half
public record Share(int count, OptionalInt inSecondHalf) {

    /// None.
    public static final Share NONE = new Share(0, OptionalInt.empty());

    public Share {
        if (count < 0 || inSecondHalf.orElse(0) < 0 || inSecondHalf.orElse(0) > count) {
            throw new IllegalArgumentException(
                    "%s of %d problems cannot be in the second half."
                            .formatted(inSecondHalf, count));
        }
    }

    /// So many, anywhere.
    public static Share anywhere(int count) {
        return new Share(count, OptionalInt.empty());
    }

    /// So many in the first half of the batch and so many in the second.
    public static Share halves(int first, int second) {
        return new Share(first + second, OptionalInt.of(second));
    }

    /// How many stand in the first half, where it matters.
    public OptionalInt inFirstHalf() {
        return inSecondHalf.isPresent()
                ? OptionalInt.of(count - inSecondHalf.getAsInt())
                : OptionalInt.empty();
    }
}
