package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import tamabako.problems.making.draw.Draws;

/// Who sits where while a split is searched: the seats of every form, and behind them a bench for
/// those left over.
final class Seats {

    /// A seat of the bench belongs to no form.
    static final int BENCH = -1;

    private final int[][] forms;
    private final int[] bench;
    private final Map<Integer, List<Place>> byClass = new HashMap<>();
    private final List<Place> seated = new ArrayList<>();
    private final List<Candidate> pool;

    /// One seat: of a form, or of the bench.
    record Place(int form, int seat) {}

    Seats(List<Candidate> pool, int[][] forms) {
        this.pool = pool;
        this.forms = forms;
        boolean[] taken = new boolean[pool.size()];
        for (int form = 0; form < forms.length; form++) {
            for (int seat = 0; seat < forms[form].length; seat++) {
                taken[forms[form][seat]] = true;
                seated.add(new Place(form, seat));
            }
        }
        bench = IntStream.range(0, pool.size()).filter(i -> !taken[i]).toArray();
        seated.forEach(this::classify);
        for (int seat = 0; seat < bench.length; seat++) {
            classify(new Place(BENCH, seat));
        }
    }

    private void classify(Place place) {
        byClass.computeIfAbsent(pool.get(at(place)).seatClass(), _ -> new ArrayList<>()).add(place);
    }

    /// How many seats the forms have together.
    int seated() {
        return seated.size();
    }

    /// Any seat of a form.
    Place drawSeated(Draws draws) {
        return seated.get((int) draws.below(seated.size()));
    }

    /// Any place of the same class as `place`, which may be of the same form or itself.
    Place drawOther(Place place, Draws draws) {
        List<Place> same = Objects.requireNonNull(byClass.get(pool.get(at(place)).seatClass()));
        return same.get((int) draws.below(same.size()));
    }

    /// The number of the candidate that sits there.
    int at(Place place) {
        return row(place)[place.seat()];
    }

    void swap(Place one, Place other) {
        int moved = at(one);
        row(one)[one.seat()] = at(other);
        row(other)[other.seat()] = moved;
    }

    /// Whether the form of `place` keeps `rule` as it now is; the bench always does.
    boolean keeps(FormRule rule, Place place) {
        return place.form() == BENCH || rule.allows(forms[place.form()], place.seat());
    }

    List<List<Integer>> forms() {
        return Arrays.stream(forms).map(form -> Arrays.stream(form).boxed().toList()).toList();
    }

    private int[] row(Place place) {
        return place.form() == BENCH ? bench : forms[place.form()];
    }
}
