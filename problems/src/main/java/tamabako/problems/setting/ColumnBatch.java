package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Terms;
import tamabako.problems.grade.Beadwork;
import tamabako.problems.grade.Format;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.column.HandCondition;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.setting.Supply.Supplied;

/// Columns of a batch: each kind on its places, and of more columns than are needed those that
/// keep the customs of a section best.
final class ColumnBatch implements BatchMaker {

    /// So many times the columns needed are made to choose from, and so many more.
    private static final int TIMES = 2;

    private static final int MORE = 2;

    private final Format.Columns format;
    private final int count;
    private final Terms terms;
    private final Map<ColumnKind, Supply> supplies = new EnumMap<>(ColumnKind.class);

    ColumnBatch(Format.Columns format, int count) {
        this.format = format;
        this.count = count;
        this.terms = format.amounts().unit().map(Terms.PLAIN::withUnit).orElse(Terms.PLAIN);
        ColumnWishes wishes = ColumnWishes.of(format);
        for (ColumnKind kind : ColumnKind.values()) {
            supplies.put(kind, new Supply(wish(wishes, kind), fits(format.beadwork())));
        }
    }

    private static ColumnWish wish(ColumnWishes wishes, ColumnKind kind) {
        return switch (kind) {
            case ADDED -> wishes.added();
            case MIXED -> wishes.mixed();
            case DIPPING -> wishes.dipping();
            case NEGATIVE -> wishes.negative();
        };
    }

    /// Makers can be asked for carries that run on, not for columns without any.
    private static Predicate<Problem> fits(Beadwork beadwork) {
        HandCondition runs = new HandCondition.CarryRun(2);
        return switch (beadwork.runningOn()) {
            case ALLOWED, REQUIRED -> _ -> true;
            case NEVER -> problem ->
                    problem instanceof Column column && runs.missedBy(column).isPresent();
        };
    }

    @Override
    public Pieces make(long seed, Sums taken) {
        Draws draws = new Draws(seed);
        List<ColumnKind> places = ColumnKind.places(count, format.signs(), draws);
        Map<ColumnKind, List<Column>> made = new EnumMap<>(ColumnKind.class);
        for (ColumnKind kind : ColumnKind.values()) {
            int needed = (int) places.stream().filter(place -> place == kind).count();
            switch (draw(kind, needed, draws, taken)) {
                case Supplied.Enough(List<Problem> problems) -> made.put(kind, columns(problems));
                case Supplied.Lacking(Lack lack) -> {
                    return new Pieces.None(lack);
                }
            }
        }
        List<Column> chosen = new ColumnChoice(places, made).best(draws);
        List<Piece> pieces = new ArrayList<>();
        for (int place = 0; place < count; place++) {
            Column column = new Column("", chosen.get(place).rows(), terms);
            pieces.add(Piece.of(column, "column " + places.get(place).word()));
        }
        return new Pieces.Found(pieces);
    }

    private Supplied draw(ColumnKind kind, int needed, Draws draws, Sums taken) {
        return needed == 0
                ? new Supplied.Enough(List.of())
                : Objects.requireNonNull(supplies.get(kind))
                        .draw(needed, TIMES * needed + MORE, draws, taken);
    }

    private static List<Column> columns(List<Problem> problems) {
        return problems.stream().map(Column.class::cast).toList();
    }
}
