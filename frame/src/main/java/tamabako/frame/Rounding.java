package tamabako.frame;

import java.math.RoundingMode;

/// What happens to places beyond those asked for.
public enum Rounding {
    /// Five and above go up (shisha-gonyū): one more place is worked, then read rounded.
    HALF_UP,
    /// Places beyond are not worked; what is left is the remainder.
    DOWN;

    /// The same in arithmetic.
    public RoundingMode mode() {
        return this == HALF_UP ? RoundingMode.HALF_UP : RoundingMode.DOWN;
    }
}
