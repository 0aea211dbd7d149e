package tamabako.problems.grade;

/// So many problems of one format.
///
/// @param count 1 or more
public record Batch(int count, Format format) {

    public Batch {
        if (count < 1) {
            throw new IllegalArgumentException("A batch has 1 problem or more, not " + count + ".");
        }
    }
}
