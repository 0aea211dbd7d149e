package tamabako.frame;

/// A whole sum worked: the operands are set, the sum is worked, the answer is read.
///
/// `setting` begins on a cleared frame and ends where `trace` begins.
public record Working(Trace setting, Trace trace, Outcome outcome) {

    public Working {
        if (!setting.end().equals(trace.start())) {
            throw new IllegalArgumentException(
                    "The working begins on %s, but %s was set."
                            .formatted(trace.start().digits(), setting.end().digits()));
        }
    }
}
