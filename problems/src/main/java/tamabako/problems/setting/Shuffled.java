package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tamabako.problems.making.draw.Draws;

/// Lists in an order drawn by chance.
final class Shuffled {

    private Shuffled() {}

    /// `list` in another order; every order is equally likely (Fisher and Yates).
    static <T> List<T> of(List<T> list, Draws draws) {
        List<T> shuffled = new ArrayList<>(list);
        for (int i = shuffled.size() - 1; i > 0; i--) {
            Collections.swap(shuffled, i, (int) draws.below(i + 1));
        }
        return shuffled;
    }
}
