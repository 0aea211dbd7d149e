package tamabako.desk.room;

import java.util.ArrayList;
import java.util.List;

/// One run of a round, from the moment it was set.
///
/// @param round which round of the setup, from 0
/// @param before the rounds of the runs before this one, in their order
/// @param phase where it stands
/// @param added how much time was added, in milliseconds
/// @param turn which problem is on, where they come one after another
/// @param said how many rows of it were said, where it is called
/// @param hands the raised hands that were counted
record Run(
        int round,
        List<Integer> before,
        Phase phase,
        long added,
        Turn turn,
        int said,
        Hands hands) {

    /// The first run of the first round.
    static final Run FIRST =
            new Run(0, List.of(), new Phase.Waiting(), 0, Turn.NONE, 0, Hands.NONE);

    Run {
        before = List.copyOf(before);
    }

    /// Its number, from 1.
    int number() {
        return before.size() + 1;
    }

    Run with(Phase other) {
        return new Run(round, before, other, added, turn, said, hands);
    }

    Run with(Turn other) {
        boolean isSame = other.problem() == turn.problem() && other.times() == turn.times();
        return new Run(round, before, phase, added, other, isSame ? said : 0, hands);
    }

    Run withAdded(long more) {
        return new Run(round, before, phase, added + more, turn, said, hands);
    }

    Run withSaid(int rows) {
        return new Run(round, before, phase, added, turn, rows, hands);
    }

    Run with(Hands others) {
        return new Run(round, before, phase, added, turn, said, others);
    }

    /// The run after this one.
    Run then(int nextRound) {
        List<Integer> all = new ArrayList<>(before);
        all.add(round);
        return new Run(nextRound, all, new Phase.Waiting(), 0, Turn.NONE, 0, Hands.NONE);
    }
}
