package tamabako.problems.effort;

import java.util.EnumMap;
import java.util.Map;
import tamabako.frame.Technique;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;

/// Counts what a hand does, step by step.
final class HandCount {

    private int direct;
    private int fives;
    private int tens;
    private int tensWithFive;
    private int motions;
    private int strokes;
    private int products;
    private int trials;
    private int revisions;
    private int firstRevisions;

    /// Counts `problem` worked in the common way, without the earlier sums of a story.
    ///
    /// @throws tamabako.frame.Unworkable if it does not fit the longest frame
    static HandCount of(Problem problem) {
        return switch (problem) {
            case Column column -> ColumnCount.of(column);
            case Product product -> ProductCount.of(product);
            case Quotient quotient -> QuotientCount.of(quotient);
            case Root root -> TraceCount.of(root);
        };
    }

    /// Counts a step by `technique` that makes a rod that shows `before` show `after`, both 0 to 9.
    ///
    /// Two strokes of a step go together unless both take beads away: six to nine come off ones
    /// first, then the five. See [tamabako.frame.Motion].
    void step(Technique technique, int before, int after) {
        int upper = after / 5 - before / 5;
        int lower = after % 5 - before % 5;
        boolean both = upper != 0 && lower != 0;
        switch (technique) {
            case DIRECT -> direct++;
            case FIVE_COMPLEMENT -> fives++;
            case TEN_COMPLEMENT -> tens++;
            case TEN_WITH_FIVE -> tensWithFive++;
        }
        strokes += both ? 2 : 1;
        motions += both && upper < 0 && lower < 0 ? 2 : 1;
    }

    void product() {
        products++;
    }

    void trial() {
        trials++;
    }

    void revision() {
        revisions++;
        firstRevisions += trials == 1 ? 1 : 0;
    }

    int motions() {
        return motions;
    }

    int strokes() {
        return strokes;
    }

    int steps(Technique technique) {
        return switch (technique) {
            case DIRECT -> direct;
            case FIVE_COMPLEMENT -> fives;
            case TEN_COMPLEMENT -> tens;
            case TEN_WITH_FIVE -> tensWithFive;
        };
    }

    /// How many products of two digits were recalled.
    int products() {
        return products;
    }

    /// How many digits of a quotient or root were tried.
    int trials() {
        return trials;
    }

    /// How often a tried digit was changed.
    int revisions() {
        return revisions;
    }

    /// How often the first digit that was tried was changed.
    int firstRevisions() {
        return firstRevisions;
    }

    Map<Technique, Integer> techniques() {
        EnumMap<Technique, Integer> counts = new EnumMap<>(Technique.class);
        for (Technique technique : Technique.values()) {
            counts.put(technique, steps(technique));
        }
        return counts;
    }
}
