package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import tamabako.frame.Technique;
import tamabako.problems.grade.Beadwork;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Lengths;
import tamabako.problems.grade.Span;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.ReadyMaker;
import tamabako.problems.making.column.HandCondition;
import tamabako.problems.making.column.Shape;
import tamabako.problems.making.column.Signs;
import tamabako.problems.making.column.TotalCondition.BelowZero;
import tamabako.problems.making.column.TotalCondition.Dips;

/// The wishes that a grade's columns turn into, each with the customs of papers, if they are to be
/// kept, as far as it leaves columns to be found. They are whole; decimals are put in afterwards,
/// for a row of a grade may have fewer digits than places, such as 0.07.
///
/// @param added columns that are added only
/// @param mixed mixed columns whose total never falls below zero
/// @param dipping mixed columns whose total falls below zero on the way and rises again
/// @param negative mixed columns whose answer is below zero (hosū)
record ColumnWishes(ReadyMaker added, ReadyMaker mixed, ReadyMaker dipping, ReadyMaker negative) {

    /// The wishes of `format`; those for which it asks no column are not to be granted.
    ///
    /// @param count how many columns there are to be at the most of each
    static ColumnWishes of(Format.Columns format, int count, SettersCustoms customs) {
        Span minusRows = format.signs().minusRows();
        Signs minus = Signs.minus(minusRows.least(), minusRows.most());
        int mixed = format.signs().mixed().count();
        boolean dips = mixed > 0 && format.signs().mayDip();
        int negative = format.signs().negative().count();
        ReadyMaker added = maker(bare(format, Signs.PLUS, Dips.NEVER), count - mixed, customs);
        return new ColumnWishes(
                added,
                mixed > 0 ? maker(bare(format, minus, Dips.NEVER), mixed, customs) : added,
                dips ? maker(bare(format, minus, Dips.ONCE_AND_BACK), mixed, customs) : added,
                negative > 0
                        ? maker(bare(format, minus, Dips.TO_THE_END), negative, customs)
                        : added);
    }

    private static ReadyMaker maker(ColumnWish bare, int count, SettersCustoms customs) {
        return switch (customs) {
            case KEPT ->
                    count > 0 ? new CustomaryColumns(bare, count).maker() : ReadyMaker.of(bare);
            case LEFT_OUT -> ReadyMaker.of(bare);
        };
    }

    private static ColumnWish bare(Format.Columns format, Signs signs, Dips dips) {
        Shape shape = new Shape(format.lengths().rows(), lengths(format.lengths()), 0);
        return withBeadwork(
                new ColumnWish(shape, signs, List.of(new BelowZero(dips)), OptionalInt.empty()),
                format.beadwork());
    }

    private static ColumnWish withBeadwork(ColumnWish wish, Beadwork beadwork) {
        Set<Technique> allowed = beadwork.allowed();
        ColumnWish worked = wish.allowing(allowed).requiring(beadwork.required());
        return switch (beadwork.runningOn()) {
            case ALLOWED, NEVER -> worked;
            case REQUIRED -> worked.with(new HandCondition.CarryRun(2));
        };
    }

    private static tamabako.problems.making.column.Lengths lengths(Lengths lengths) {
        return switch (lengths) {
            case Lengths.Equal(_, int length) ->
                    new tamabako.problems.making.column.Lengths.Between(length, length);
            case Lengths.Between(_, Span digits) ->
                    new tamabako.problems.making.column.Lengths.Between(
                            digits.least(), digits.most());
            case Lengths.InAll(_, Span digits, int ji) ->
                    new tamabako.problems.making.column.Lengths.Total(
                            ji, digits.least(), digits.most());
            case Lengths.Table(Map<Integer, Integer> rowsByDigits) ->
                    new tamabako.problems.making.column.Lengths.Table(each(rowsByDigits));
        };
    }

    private static List<Integer> each(Map<Integer, Integer> rowsByDigits) {
        List<Integer> digits = new ArrayList<>();
        rowsByDigits.forEach((length, rows) -> {
            for (int row = 0; row < rows; row++) {
                digits.add(length);
            }
        });
        return digits;
    }
}
