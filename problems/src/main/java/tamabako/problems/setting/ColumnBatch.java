package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.grade.Format;
import tamabako.problems.making.ReadyMaker;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.setting.Supply.Supplied;

/// Columns of a batch: each kind on its places, and of more columns than are needed those that keep
/// the customs of a section best.
final class ColumnBatch implements BatchMaker {

    /// So many times the columns needed are made at a time to choose from, and so many more.
    private static final int TIMES = 2;

    private static final int MORE = 2;

    /// Times that more are made before the best choice has to do.
    private static final int ROUNDS = 3;

    private final Format.Columns format;
    private final int count;
    private final SettersCustoms customs;
    private final Map<ColumnKind, Supply> supplies = new EnumMap<>(ColumnKind.class);

    ColumnBatch(Format.Columns format, int count, SettersCustoms customs) {
        this.format = format;
        this.count = count;
        this.customs = customs;
        ColumnFinish finish = new ColumnFinish(format);
        ColumnWishes wishes = ColumnWishes.of(format, count, customs);
        for (ColumnKind kind : ColumnKind.values()) {
            supplies.put(kind, new Supply(maker(wishes, kind), finish::of));
        }
    }

    /// How many columns are made where so many are needed.
    static int wished(int needed) {
        return TIMES * needed + MORE;
    }

    private static ReadyMaker maker(ColumnWishes wishes, ColumnKind kind) {
        return switch (kind) {
            case ADDED -> wishes.added();
            case MIXED -> wishes.mixed();
            case DIPPING -> wishes.dipping();
            case NEGATIVE -> wishes.negative();
        };
    }

    @Override
    public Pieces make(long seed, Sums taken) {
        Draws draws = new Draws(seed);
        List<ColumnKind> places = ColumnKind.places(count, format.signs(), draws);
        Sums seen = taken.copy();
        Map<ColumnKind, List<Column>> made = new EnumMap<>(ColumnKind.class);
        for (ColumnKind kind : places) {
            if (!made.containsKey(kind)) {
                int needed = Collections.frequency(places, kind);
                switch (supply(kind).draw(needed, drawn(needed), draws, seen)) {
                    case Supplied.Enough(List<Problem> problems) ->
                            made.put(kind, new ArrayList<>(columns(problems)));
                    case Supplied.Lacking(Lack lack) -> {
                        return new Pieces.None(lack);
                    }
                }
            }
        }
        List<Column> chosen = chosen(places, made, draws, seen);
        chosen.forEach(taken::add);
        return new Pieces.Found(pieces(places, chosen));
    }

    private int drawn(int needed) {
        return switch (customs) {
            case KEPT -> wished(needed);
            case LEFT_OUT -> needed;
        };
    }

    private List<Column> chosen(
            List<ColumnKind> places, Map<ColumnKind, List<Column>> made, Draws draws, Sums seen) {
        return switch (customs) {
            case KEPT -> choose(places, made, draws, seen);
            case LEFT_OUT ->
                    places.stream()
                            .map(kind -> Objects.requireNonNull(made.get(kind)).removeFirst())
                            .toList();
        };
    }

    private List<Column> choose(
            List<ColumnKind> places, Map<ColumnKind, List<Column>> made, Draws draws, Sums seen) {
        ColumnChoice choice = new ColumnChoice(places, made);
        List<Column> chosen = choice.best(draws);
        for (int round = 1; round < ROUNDS && choice.missed() > 0; round++) {
            made.forEach((kind, columns) -> {
                int more = wished(Collections.frequency(places, kind));
                if (supply(kind).draw(1, more, draws, seen)
                        instanceof Supplied.Enough(List<Problem> problems)) {
                    columns.addAll(columns(problems));
                }
            });
            choice = new ColumnChoice(places, made);
            chosen = choice.best(draws);
        }
        return chosen;
    }

    private Supply supply(ColumnKind kind) {
        return Objects.requireNonNull(supplies.get(kind));
    }

    private static List<Piece> pieces(List<ColumnKind> places, List<Column> chosen) {
        List<Piece> pieces = new ArrayList<>();
        for (int place = 0; place < places.size(); place++) {
            pieces.add(Piece.of(chosen.get(place), "column " + places.get(place).word()));
        }
        return pieces;
    }

    private static List<Column> columns(List<Problem> problems) {
        return problems.stream().map(Column.class::cast).toList();
    }
}
