package tamabako.problems.setting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import tamabako.problems.Column;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.setting.Balance.Look;

/// Chooses, of columns made for the places of a batch, those that together keep the customs of a
/// section: places change their columns, among each other and with those left over, as long as no
/// more of the customs is missed.
final class ColumnChoice {

    /// Changes tried before what was found has to do.
    private static final int TRIES = 3_000;

    /// The columns on the places, in their order, and behind them those left over.
    private final List<Column> columns = new ArrayList<>();

    private final int places;
    private final List<Look> looks;

    /// For each position of `columns` those it may change with.
    private final List<List<Integer>> sames = new ArrayList<>();

    /// @param made for each kind of column at least as many as it has places
    ColumnChoice(List<ColumnKind> kinds, Map<ColumnKind, List<Column>> made) {
        places = kinds.size();
        Map<ColumnKind, List<Integer>> positions = new EnumMap<>(ColumnKind.class);
        Map<ColumnKind, Deque<Column>> left = new EnumMap<>(ColumnKind.class);
        made.forEach((kind, some) -> left.put(kind, new ArrayDeque<>(some)));
        for (ColumnKind kind : kinds) {
            add(kind, Objects.requireNonNull(left.get(kind)).removeFirst(), positions);
        }
        left.forEach((kind, some) -> some.forEach(column -> add(kind, column, positions)));
        looks = new ArrayList<>(columns.stream().map(Look::new).toList());
    }

    private void add(ColumnKind kind, Column column, Map<ColumnKind, List<Integer>> positions) {
        List<Integer> same = positions.computeIfAbsent(kind, _ -> new ArrayList<>());
        same.add(columns.size());
        columns.add(column);
        sames.add(same);
    }

    /// The best choice found, in the order of the places.
    List<Column> best(Draws draws) {
        double missed = missed();
        for (int i = 0; i < TRIES && missed > 0; i++) {
            int place = (int) draws.below(places);
            List<Integer> same = sames.get(place);
            int other = same.get((int) draws.below(same.size()));
            swap(place, other);
            double changed = missed();
            if (changed > missed) {
                swap(place, other);
            } else {
                missed = changed;
            }
        }
        return List.copyOf(columns.subList(0, places));
    }

    /// What the choice misses of the customs.
    double missed() {
        return Balance.missed(looks.subList(0, places));
    }

    private void swap(int place, int other) {
        Collections.swap(looks, place, other);
        Collections.swap(columns, place, other);
    }
}
