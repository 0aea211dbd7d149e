package tamabako.showing.safety;

/// What comes of looking at a showing.
///
/// Only the first three may be shown. A showing that keeps to the letter of WCAG 2.2 alone is
/// refused like one that does not: the readings differ, and children are the most sensitive.
public enum Verdict {
    /// Nothing changes enough to be a flash.
    NO_FLASH(true),
    /// Each number takes 360 ms or more from one onset to the next.
    SLOW_ENOUGH(true),
    /// What flashes fits into a quarter of the field, measured by the box around it.
    SMALL_ENOUGH(true),
    /// Its ink alone fits, or a kinder way of counting finds three flashes a second: not enough.
    ONLY_BY_THE_LETTER(false),
    /// A saturated red flashes.
    RED(false),
    /// Too large and too fast.
    TOO_MUCH(false);

    private final boolean safe;

    Verdict(boolean safe) {
        this.safe = safe;
    }

    /// Whether it may be shown.
    public boolean isSafe() {
        return safe;
    }
}
