package tamabako.problems.making;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import tamabako.frame.Technique;
import tamabako.problems.Column;
import tamabako.problems.making.column.Condition;
import tamabako.problems.making.column.Customs;
import tamabako.problems.making.column.HandCondition;
import tamabako.problems.making.column.HandCondition.OnlyTechniques;
import tamabako.problems.making.column.HandCondition.TechniqueCount;
import tamabako.problems.making.column.Lengths;
import tamabako.problems.making.column.Missed;
import tamabako.problems.making.column.Search;
import tamabako.problems.making.column.Shape;
import tamabako.problems.making.column.Signs;
import tamabako.problems.making.column.TotalCondition.BelowZero;
import tamabako.problems.making.column.TotalCondition.Dips;

/// Columns (mitorizan).
///
/// ```
/// ColumnWish.of(10, 6).withMinusRows(3).with(new DigitsEach(4, 8)).with(new LeadsDiffer())
/// ```
///
/// Of all columns that grant the wish each is equally likely, given the lengths of its rows; see
/// docs/making.md for where that is exact.
///
/// @param shape rows, their lengths, decimals
/// @param signs which rows are taken
/// @param conditions what else is asked, in the order of [Condition#inOrder()]; no two about the
///   same
/// @param strokesWithin by how many in a hundred the strokes of the columns of one set may differ,
///   where they have to be about equally long to work
public record ColumnWish(
        Shape shape, Signs signs, List<Condition> conditions, OptionalInt strokesWithin)
        implements Wish {

    public ColumnWish {
        conditions = conditions.stream().sorted(Condition.inOrder()).toList();
    }

    /// Columns of `rows` rows of `digits` digits each that are added by any technique; the total
    /// never falls below zero.
    public static ColumnWish of(int rows, int digits) {
        return new ColumnWish(
                new Shape(rows, new Lengths.Between(digits, digits), 0),
                Signs.PLUS,
                List.of(new BelowZero(Dips.NEVER)),
                OptionalInt.empty());
    }

    public ColumnWish withRows(int changed) {
        return with(new Shape(changed, shape.lengths(), shape.places()));
    }

    public ColumnWish withDigits(int least, int most) {
        return withLengths(new Lengths.Between(least, most));
    }

    public ColumnWish withLengths(Lengths changed) {
        return with(new Shape(shape.rows(), changed, shape.places()));
    }

    public ColumnWish withPlaces(int changed) {
        return with(new Shape(shape.rows(), shape.lengths(), changed));
    }

    /// Exactly so many minus rows.
    public ColumnWish withMinusRows(int changed) {
        return withMinusRows(changed, changed);
    }

    public ColumnWish withMinusRows(int least, int most) {
        return with(new Signs(least, most, signs.lastPlus(), signs.longestRun()));
    }

    public ColumnWish with(Shape changed) {
        return new ColumnWish(changed, signs, conditions, strokesWithin);
    }

    public ColumnWish with(Signs changed) {
        return new ColumnWish(shape, changed, conditions, strokesWithin);
    }

    /// Asks `condition` too, in the place of one about the same.
    public ColumnWish with(Condition condition) {
        List<Condition> changed = new ArrayList<>(conditions);
        changed.removeIf(condition::isAboutSame);
        changed.add(condition);
        return with(changed);
    }

    public ColumnWish without(Condition condition) {
        return with(conditions.stream().filter(one -> !one.equals(condition)).toList());
    }

    private ColumnWish with(List<Condition> changed) {
        return new ColumnWish(shape, signs, changed, strokesWithin);
    }

    /// Asks those of `customs` too that leave columns to be found, each in its turn, where nothing
    /// is asked about the same yet.
    public ColumnWish keeping(List<Condition> customs) {
        ColumnWish kept = this;
        for (Condition custom : customs) {
            ColumnWish more = kept.with(custom);
            boolean asked = kept.conditions.stream().anyMatch(custom::isAboutSame);
            if (!asked && more.isFound()) {
                kept = more;
            }
        }
        return kept;
    }

    /// Asks for `customary` signs where they leave columns to be found.
    public ColumnWish keeping(Signs customary) {
        ColumnWish kept = with(customary);
        return kept.isFound() ? kept : this;
    }

    private boolean isFound() {
        return Limits.broken(this, 1).isEmpty() && Search.finds(shape, signs, conditions);
    }

    /// Keeps to what is usual on a practice sheet, as far as it can be.
    public ColumnWish withCustomsOfPractice() {
        return keeping(Customs.signsOfPractice(signs, shape)).keeping(Customs.ofPractice(shape));
    }

    /// Keeps to what is usual in a paper, as far as it can be.
    public ColumnWish withCustomsOfPapers() {
        return keeping(Customs.signsOfPapers(signs, shape)).keeping(Customs.ofPapers(shape));
    }

    /// The columns of one set take about equally many strokes: the most at most so many in a
    /// hundred more than the fewest.
    public ColumnWish withStrokesWithin(int hundredths) {
        return new ColumnWish(shape, signs, conditions, OptionalInt.of(hundredths));
    }

    public ColumnWish allowing(Technique... changed) {
        return allowing(Set.copyOf(Arrays.asList(changed)));
    }

    /// Steps may be done by these techniques only.
    public ColumnWish allowing(Set<Technique> changed) {
        boolean all = changed.size() == Technique.values().length;
        List<Condition> others = new ArrayList<>(conditions);
        others.removeIf(OnlyTechniques.class::isInstance);
        return all ? with(others) : with(new OnlyTechniques(changed));
    }

    public ColumnWish requiring(Technique... changed) {
        return requiring(Set.copyOf(Arrays.asList(changed)));
    }

    /// Each of these techniques occurs in every column, and no other has to.
    public ColumnWish requiring(Set<Technique> changed) {
        List<Condition> others = new ArrayList<>(conditions);
        others.removeIf(TechniqueCount.class::isInstance);
        changed.forEach(one -> others.add(new TechniqueCount(one, 1, HandCondition.ANY)));
        return with(others);
    }

    /// Whether the running total may fall below zero.
    public ColumnWish goingBelowZero(boolean changed) {
        List<Condition> others = new ArrayList<>(conditions);
        others.removeIf(BelowZero.class::isInstance);
        return changed ? with(others) : with(new BelowZero(Dips.NEVER));
    }

    public int rows() {
        return shape.rows();
    }

    /// The techniques that steps may be done by.
    public Set<Technique> allowed() {
        return conditions.stream()
                .filter(OnlyTechniques.class::isInstance)
                .map(one -> ((OnlyTechniques) one).techniques())
                .findFirst()
                .orElseGet(() -> EnumSet.allOf(Technique.class));
    }

    /// The techniques that every column must have.
    public Set<Technique> required() {
        Set<Technique> required = EnumSet.noneOf(Technique.class);
        for (Condition condition : conditions) {
            if (condition instanceof TechniqueCount(Technique technique, int least, _)
                    && least > 0) {
                required.add(technique);
            }
        }
        return required;
    }

    /// Whether a running total may fall below zero.
    public boolean mayGoBelowZero() {
        return !conditions.contains(new BelowZero(Dips.NEVER));
    }

    /// Everything in which `column` does not grant this wish.
    public List<Missed> missedBy(Column column) {
        List<Missed> missed = new ArrayList<>(shape.missedBy(column));
        missed.addAll(signs.missedBy(column));
        conditions.forEach(condition -> condition.missedBy(column).ifPresent(missed::add));
        return missed;
    }
}
