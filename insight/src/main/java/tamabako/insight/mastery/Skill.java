package tamabako.insight.mastery;

import java.util.Locale;
import tamabako.insight.slip.SlipKind;

/// What multiplying, dividing and extracting roots ask besides the moves of the hand.
public enum Skill {
    /// The multiplication table (kuku).
    TABLES(SlipKind.TABLE_SLIP),
    /// The rods that a product belongs on.
    PLACE_OF_PRODUCT(SlipKind.PRODUCT_MISPLACED),
    /// Finding and revising a digit of a quotient or root.
    TRIAL_DIGIT(SlipKind.QUOTIENT_OFF_BY_ONE);

    private final SlipKind slip;

    Skill(SlipKind slip) {
        this.slip = slip;
    }

    /// The kind of slip that shows that it is wanting.
    public SlipKind slip() {
        return slip;
    }

    /// The word used in files, such as `trial-digit`.
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
