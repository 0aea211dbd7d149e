package tamabako.problems.making.column;

import java.util.ArrayList;
import java.util.List;
import tamabako.problems.words.Sayable;

/// Finds the fewest wishes that clash: each is left out in turn, and stays out where the others
/// clash without it.
final class Clash {

    private static final long WORK = 300_000;

    private Clash() {}

    /// What clashes of `asked`, of which it is proved that there is no column: the shape, always,
    /// and what it takes besides.
    static List<Sayable> in(Asked asked) {
        Asked fewest = asked;
        for (Condition condition : asked.conditions().reversed()) {
            List<Condition> others = new ArrayList<>(fewest.conditions());
            others.remove(condition);
            fewest = clashing(fewest.with(others), fewest);
        }
        Signs any = Signs.minus(0, asked.shape().rows() - 1);
        fewest = clashing(fewest.with(any), fewest);
        List<Sayable> clash = new ArrayList<>(List.of(asked.shape()));
        if (!fewest.signs().equals(any)) {
            clash.add(asked.signs());
        }
        clash.addAll(fewest.conditions());
        return clash;
    }

    private static Asked clashing(Asked fewer, Asked more) {
        return Proof.isThereNone(fewer, WORK) ? fewer : more;
    }
}
